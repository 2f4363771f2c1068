using System.Collections;
using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Spoilers.Languages;
using HintBook.Text;

namespace HintBook.Spoilers;

/// <summary>From a book and its survey to what is told too early: the one door of this room.</summary>
internal static class Leaks
{
    /// <summary>
    /// Every mention of a secret at a place where it isn't certain to be known, every answer that leaves something out, and what couldn't
    /// be looked for. Reads each text once, whatever the number of secrets.
    /// </summary>
    /// <param name="book">The book.</param>
    /// <param name="survey">What is proved of its box.</param>
    /// <param name="work">Counts how often this is worked out.</param>
    /// <returns>What may be said where, for whoever checks what is made of the book; and the findings.</returns>
    public static (MayBeSaid MayBeSaid, Findings Findings) In(Book book, Survey survey, WorkLog? work = null)
    {
        var (mayBeSaid, find) = Begin(book, survey, work);
        return (mayBeSaid, find());
    }

    /// <summary>The first half of the same: what may be said where, and what finds the rest, on any thread.</summary>
    /// <inheritdoc cref="In"/>
    /// <returns>What may be said where, and the search for what is said too early.</returns>
    public static (MayBeSaid MayBeSaid, Func<Findings> Find) Begin(Book book, Survey survey, WorkLog? work = null)
    {
        work?.Did(Work.CollectSecrets, book.Language.Value);
        var secrets = Secret.Collect(book);
        var finders = Finders.Build(book, secrets);
        var knowledge = new Knowledge(book, survey, secrets);
        var titles = new KnownTitles(survey, secrets);
        var allowed = new Allowances(book, secrets);
        var mayBeSaid = MayBeSaid.Derive(book, survey, secrets, finders, knowledge, titles, allowed);
        return (mayBeSaid, () => Found(book, survey, secrets, finders, knowledge, titles, allowed));
    }

    private static Findings Found(
        Book book, Survey survey, ImmutableArray<Secret> secrets, Finders finders, Knowledge knowledge, KnownTitles titles, Allowances allowed)
    {
        var search = new Search(secrets, finders, allowed, new Reasons(book, survey, knowledge), knowledge, titles, survey);
        var pictures = new SharedPictures(book, finders);
        var findings = new List<Finding>();
        var ofCopies = secrets.Any(secret => secret.Kind == SecretKind.CopyAnswer);

        findings.AddRange(Passage.Outside(book).Concat(FilmPassages.Outside(book)).SelectMany(passage => search.In(passage, null, knowledge.Outside)));
        foreach (var photo in Passage.PhotosOutside(book))
            findings.AddRange([.. search.Shown(photo, null, knowledge.Outside), .. search.ShownElsewhere(photo, pictures, null, knowledge.Outside)]);
        foreach (var stage in book.Stages.Where(stage => survey.Stages[stage.Id.Value].Reachable))
        {
            var known = knowledge.Of(stage.Id.Value);
            foreach (var passage in Passage.AllOf(stage))
                findings.AddRange(search.In(passage, stage, known[(int)passage.Tier]));
            foreach (var said in FilmPassages.In(book, stage))
                findings.AddRange(search.In(said, stage, known[(int)said.Tier]));
            findings.AddRange(search.Worked(stage, known[(int)Tier.Answer]));
            findings.AddRange(search.Own(stage, book));
            if (stage.Reset is { } reset && ofCopies)
                findings.AddRange(search.In(new Passage(reset.Markdown, reset.At, Tier.Answer, "the reset"), stage, knowledge.OfAllCopies));
            foreach (var photo in stage.Photos)
            {
                if (Passage.TierOf(photo.Place) is not { } tier)
                    continue;
                findings.AddRange(search.Shown(photo, stage, known[(int)tier]));
                findings.AddRange(search.ShownElsewhere(photo, pictures, stage, known[(int)tier]));
            }
        }

        findings.AddRange(Ladder.In(book));
        // What a code is called matters little beside the code itself.
        findings.AddRange(finders.NotSought
            .Where(one => one.Secret.Kind == SecretKind.Answer || knowledge.AnswerOf(one.Secret.Id) is null)
            .Select(LeakFindings.NotLookedFor));
        findings.AddRange(allowed.Unused);
        if (SearchLanguage.For(book.Language.Value) == SearchLanguage.Unknown)
            findings.Add(LeakFindings.Language(book.Language, book.File));
        return Findings.Of(findings);
    }

    /// <summary>The same for a text that isn't the author's alone, and that anyone reads before the box is open.</summary>
    /// <param name="book">The book, in the text's language.</param>
    /// <param name="survey">What is proved of its box.</param>
    /// <param name="text">The text.</param>
    /// <param name="where">What findings call it.</param>
    public static IEnumerable<Finding> Outside(Book book, Survey survey, string text, string where)
    {
        var secrets = Secret.Collect(book);
        var finders = Finders.Build(book, secrets);
        var knowledge = new Knowledge(book, survey, secrets);
        var search = new Search(
            secrets, finders, new(book, secrets), new(book, survey, knowledge), knowledge, new KnownTitles(survey, secrets), survey);
        return search.In(new Passage(text, book.File.Top, Tier.Outside, where), null, knowledge.Outside);
    }

    private sealed record Search(
        ImmutableArray<Secret> Secrets,
        Finders Finders,
        Allowances Allowed,
        Reasons Reasons,
        Knowledge Knowledge,
        KnownTitles Titles,
        Survey Survey)
    {
        private const int MostTold = 20;

        // A known name covers a secret that is part of it, and of a secret within a longer one only the longer is said.
        // Sure and likely mentions are counted apart, so that no likely one takes the place of a sure one.
        public List<Finding> In(Passage passage, Stage? stage, BitArray known)
        {
            var mentions = Finders.In(passage);
            if (mentions.Count == 0)
                return [];
            var findings = new List<Finding>();
            var told = new Dictionary<(int, Sureness), int>();
            var longest = mentions.Max(mention => mention.End - mention.Start);
            for (var i = 0; i < mentions.Count; i++)
            {
                var mention = mentions[i];
                if (known[mention.Secret]
                    || IsKnownTitle(Secrets[mention.Secret], stage, passage.Tier)
                    || told.GetValueOrDefault((mention.Secret, mention.Sureness)) == MostTold
                    || IsCovered(i, mentions, known, longest)
                    || Allowed.Cover(mention.Secret, stage?.Id.Value))
                    continue;
                told[(mention.Secret, mention.Sureness)] = told.GetValueOrDefault((mention.Secret, mention.Sureness)) + 1;
                var secret = Secrets[mention.Secret];
                var where = stage is null ? passage.Where : $"{passage.Where} of “{stage.Title.Value}”";
                if (secret.Kind == SecretKind.CopyAnswer)
                {
                    findings.Add(LeakFindings.OfCopy(secret, passage.SpanOf(mention.Start, mention.End), where, mention.Sureness));
                    continue;
                }

                findings.Add(LeakFindings.Leak(
                    secret,
                    passage.SpanOf(mention.Start, mention.End),
                    where,
                    IsExact(secret, stage) ? mention.Sureness : Sureness.Likely,
                    Reasons.Of(secret, stage, passage.Tier)));
            }

            return findings;
        }

        // A working prints its code, though the text has only its id.
        public IEnumerable<Finding> Worked(Stage stage, BitArray known) =>
            from mark in WorkingMark.In(stage.Answer.Markdown).DistinctBy(mark => mark.Code)
            let secret = Knowledge.AnswerOf(mark.Code)
            where secret is not null && !known[secret.Number] && !Allowed.Cover(secret.Number, stage.Id.Value)
            let passage = new Passage(stage.Answer.Markdown, stage.Answer.At, Tier.Answer, "the answer")
            select LeakFindings.Leak(
                secret,
                passage.SpanOf(mark.Start, mark.End),
                $"the answer of “{stage.Title.Value}”",
                IsExact(secret, stage) ? Sureness.Sure : Sureness.Likely,
                Reasons.Of(secret, stage, Tier.Answer));

        // What a copy has of its own is filled in on the page: the code is told there, though the text says only under which name it stands.
        public IEnumerable<Finding> Own(Stage stage, Book book) =>
            from mark in OwnMark.In(stage.Answer.Markdown).DistinctBy(mark => mark.Name)
            from code in book.Box.Codes
            where code.AnswerByCopy?.Value == mark.Name || code.ClueByCopy?.Value == mark.Name
            let secret = Knowledge.Named(code.Id.Value)
            where secret is not null && !Knowledge.IsMetBy(stage.Id.Value, code.Id.Value) && !Allowed.Cover(secret.Number, stage.Id.Value)
            let passage = new Passage(stage.Answer.Markdown, stage.Answer.At, Tier.Answer, "the answer")
            select LeakFindings.Leak(
                secret,
                passage.SpanOf(mark.Start, mark.End),
                $"the answer of “{stage.Title.Value}”",
                Sureness.Sure,
                Reasons.Of(secret, stage, Tier.Answer));

        public IEnumerable<Finding> Shown(Photo photo, Stage? stage, BitArray known) =>
            from shown in photo.Shows
            let name = Knowledge.Named(shown.Value)
            where name is not null
            let secret = Knowledge.AnswerOf(shown.Value) ?? name
            where !known[secret.Number] && !Allowed.Cover(secret.Number, stage?.Id.Value)
            let tier = Passage.TierOf(photo.Place)!.Value
            let place = stage is null ? Passage.In(photo.Place) : $"{Passage.In(photo.Place)} of “{stage.Title.Value}”"
            select LeakFindings.Shown(secret, shown.At, place, Reasons.Of(secret, stage, tier));

        // What the picture's own words say here is found in them, and what it is declared to show is told already.
        public IEnumerable<Finding> ShownElsewhere(Photo photo, SharedPictures pictures, Stage? stage, BitArray known)
        {
            var tier = Passage.TierOf(photo.Place)!.Value;
            var here = Passage.OfPhoto(photo, tier).SelectMany(passage => Finders.In(passage).Select(mention => mention.Secret).ToArray()).ToHashSet();
            var declared = photo.Shows.Select(shown => shown.Value).ToHashSet();
            return from said in pictures.Of(photo)
                   let secret = Secrets[said.Secret]
                   where !known[secret.Number] && !here.Contains(secret.Number) && !declared.Contains(secret.Id)
                       && !IsKnownTitle(secret, stage, tier) && !Allowed.Cover(secret.Number, stage?.Id.Value)
                   let place = stage is null ? Passage.In(photo.Place) : $"{Passage.In(photo.Place)} of “{stage.Title.Value}”"
                   select LeakFindings.ShownElsewhere(secret, photo.File.At, place, said.Elsewhere, Reasons.Of(secret, stage, tier));
        }

        private bool IsKnownTitle(Secret secret, Stage? stage, Tier tier) =>
            secret.Kind == SecretKind.Title && stage is not null && Titles.Knows(secret.Id, stage.Id.Value, tier);

        // What a stage itself gives is secret there whatever else couldn't be proved.
        private bool IsExact(Secret secret, Stage? stage) =>
            stage is null || Survey.Stages[stage.Id.Value].Exact || Knowledge.EffectsOf(stage.Id.Value).Gives.Contains(secret.Id);

        // The mentions stand by place, the longest first, and none is longer than the longest: only neighbours can take one in.
        private bool IsCovered(int at, IReadOnlyList<Mention> all, BitArray known, int longest)
        {
            var mention = all[at];
            for (var i = at - 1; i >= 0 && mention.Start - all[i].Start <= longest; i--)
            {
                if (Covers(all[i], mention, known))
                    return true;
            }

            for (var i = at + 1; i < all.Count && all[i].Start == mention.Start; i++)
            {
                if (Covers(all[i], mention, known))
                    return true;
            }

            return false;
        }

        private bool Covers(Mention other, Mention mention, BitArray known)
        {
            // A name that is taken together from words with others between them hides nothing that surely stands there.
            if (other.Sureness == Sureness.Likely && mention.Sureness == Sureness.Sure)
                return false;
            // What a stage is called must itself tell nothing.
            if (other.Secret == mention.Secret || !other.Covers(mention) || (known[other.Secret] && Secrets[other.Secret].Kind == SecretKind.Title))
                return false;
            var longer = other.End - other.Start > mention.End - mention.Start;
            if (known[other.Secret])
                return longer || other.Sureness >= mention.Sureness;
            return longer ? other.Sureness == Sureness.Sure : other.Secret < mention.Secret && Secrets[mention.Secret].Kind == SecretKind.Title;
        }
    }
}
