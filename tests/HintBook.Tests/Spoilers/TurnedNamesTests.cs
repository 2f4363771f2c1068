using HintBook.Spoilers;

namespace HintBook.Tests.Spoilers;

/// <summary>Names whose words stand apart or turned about, and everyday words that may mean a thing.</summary>
public class TurnedNamesTests
{
    [Theory]
    [InlineData("en", "oil drawer", "You will meet the drawer for the oil soon.")]
    [InlineData("en", "green flag", "a flag in green")]
    [InlineData("en", "bronze medal", "a medal of bronze")]
    [InlineData("en", "blue vial", "a vial, blue as the sea")]
    [InlineData("en", "blue vial", "a blue phial")]
    [InlineData("en", "headless prince", "The prince without a head waits.")]
    [InlineData("en", "signal flag", "Pull the flag from the mast. The keeper used it to signal ships.")]
    [InlineData("en", "bullseye", "the bull's-eye")]
    [InlineData("en", "sulphur match", "a sulfur match")]
    [InlineData("en", "gold medal", "a golden medal")]
    [InlineData("en", "stopper", "Unstopper it.")]
    [InlineData("de", "Bronzemedaille", "eine Medaille aus Bronze")]
    [InlineData("de", "silberne Kette", "Am Haken hängt eine Kette aus Silber.")]
    [InlineData("fr", "drapeau vert", "un drapeau, vert comme la mer")]
    [InlineData("es", "lámpara de aceite", "la lámpara que quemaba aceite")]
    [InlineData("ja", "硫黄の引き出し", "硫黄を入れていた引き出し")]
    [InlineData("ar", "ميزان النحاس", "ميزان من نحاس")]
    public void A_name_is_found_turned_about(string language, string name, string text) => Assert.Equal([name], Hidden.In(text, Hidden.Names(name), language));

    [Theory]
    [InlineData("green flag", "The flag is red, and the door is green.")]
    [InlineData("pocket watch", "The watch in his pocket ticks.")]
    [InlineData("flat bar", "A flat stone lies behind the bar.")]
    [InlineData("stopper", "one stop per stage")]
    [InlineData("the a1", "Part 1")]
    public void Words_that_belong_to_other_things_are_no_name(string name, string text) => Assert.Empty(Hidden.In(text, Hidden.Names(name)));

    [Theory]
    [InlineData("en", "brass pestle", "Unscrew the head of the pestle.", 1)]
    [InlineData("en", "torn playbill", "Half a sheet, ripped across the middle. It's a playbill.", 1)]
    [InlineData("fr", "sifflet du bosco", "Prenez le sifflet.", 1)]
    [InlineData("en", "bronze medal", "You deserve a medal.", 0)]
    [InlineData("en", "gilded anchor", "My grandfather dropped anchor in Hull.", 0)]
    [InlineData("en", "customs ledger", "My sister keeps a ledger of her grievances.", 0)]
    [InlineData("en", "honey jar", "The jar is empty.", 0)]
    public void A_rare_noun_of_a_thing_is_a_likely_mention_by_itself(string language, string name, string text, int found)
    {
        var mentions = new Finder([.. Hidden.Names(name).Select(secret => secret with { IsHeld = true })], language).In(text);

        Assert.Equal(found, mentions.Count);
        Assert.All(mentions, mention => Assert.Equal(Sureness.Likely, mention.Sureness));
    }

    [Theory]
    [InlineData("My brother-in-law lives near Cork.")]
    [InlineData("Cork tiles are easier on the knees.")]
    [InlineData("Your answer should cork the bottle.")]
    public void A_place_a_material_and_a_verb_are_no_thing(string text) =>
        Assert.Empty(new Finder([.. Hidden.Names("cork").Select(secret => secret with { IsHeld = true })]).In(text));

    [Theory]
    [InlineData("A key lies under the chimney.", 1)]
    [InlineData("Take the key.", 1)]
    [InlineData("The key to this is patience.", 0)]
    [InlineData("That is the key point.", 0)]
    [InlineData("The key", 0)]
    public void An_everyday_thing_is_a_likely_mention_where_it_is_handled(string text, int found)
    {
        var secrets = Hidden.Names("key").Select(secret => secret with { IsHeld = true });
        var mentions = new Finder([.. secrets]).In(text);

        Assert.Equal(found, mentions.Count);
        Assert.All(mentions, mention => Assert.Equal(Sureness.Likely, mention.Sureness));
    }
}
