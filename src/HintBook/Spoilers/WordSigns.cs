using HintBook.Spoilers.Languages;
using HintBook.Text;

namespace HintBook.Spoilers;

/// <summary>What some words of a language stand for: places, letters, hours. By their numbers in the list of words; others have none.</summary>
internal sealed class WordSigns
{
    /// <summary>The place of the last piece of a code.</summary>
    public const int Last = 100;

    /// <summary>The place before the one that was named last.</summary>
    public const int Previous = -1;

    private readonly Dictionary<int, int> places = [];
    private readonly Dictionary<int, char> letters = [];
    private readonly Dictionary<int, int> hours = [];
    private readonly HashSet<int> twice = [];
    private readonly HashSet<int> ends = [];
    private readonly HashSet<int> standing = [];
    private readonly HashSet<int> similes = [];
    private readonly HashSet<int> tens = [];
    private readonly HashSet<int> down = [];
    private readonly HashSet<int> up = [];
    private readonly HashSet<int> backwards = [];
    private readonly HashSet<int> left = [];
    private readonly HashSet<int> right = [];
    private readonly HashSet<int> alphabet = [];
    private readonly HashSet<int> pronouns = [];
    private PieceHint[] hints = [];
    private readonly HashSet<int> order = [];
    private readonly HashSet<int> locks = [];
    private readonly HashSet<int> counted = [];
    private readonly HashSet<int> steps = [];
    private readonly HashSet<int> later = [];
    private readonly HashSet<int> earlier = [];
    private readonly HashSet<int> otherHand = [];
    private readonly HashSet<int> both = [];
    private readonly HashSet<int> noTime = [];
    private readonly HashSet<int> ordinary = [];
    private readonly HashSet<int> containers = [];
    private readonly HashSet<int> compounding = [];
    private readonly HashSet<int> holdable = [];
    private readonly HashSet<int> presenting = [];
    private readonly HashSet<int> particles = [];
    private readonly HashSet<int> beforeVerb = [];
    private readonly HashSet<int> possessive = [];
    private readonly HashSet<int> indefinite = [];
    private readonly HashSet<int> of = [];
    private readonly HashSet<int> degrees = [];
    private readonly HashSet<int> having = [];
    private readonly HashSet<int> withArticle = [];
    private readonly HashSet<int> questions = [];
    private readonly HashSet<int> addressed = [];
    private readonly HashSet<int> tallies = [];
    private readonly HashSet<int> rest = [];
    private readonly HashSet<int> times = [];
    private readonly Dictionary<int, char> doubled = [];

    public WordSigns()
    {
    }

    /// <summary>Reads them from what is known of a language.</summary>
    /// <param name="language">The language.</param>
    /// <param name="add">Makes a word matter, and gives its number.</param>
    public WordSigns(SearchLanguage language, Func<string, int> add)
    {
        var (pieces, clock) = (language.Pieces, language.Clock);
        foreach (var (i, forms) in Split(pieces.Ordinals).Index())
        {
            foreach (var form in forms.Split('/'))
                places.TryAdd(add(form), i + 1);
        }

        foreach (var word in Split(pieces.Last))
            places.TryAdd(add(word), Last);
        foreach (var word in Split(pieces.BeforeLast))
            places.TryAdd(add(word), Last - 1);
        foreach (var word in Split(pieces.Previous))
            places.TryAdd(add(word), Previous);
        foreach (var word in Split(pieces.Ends))
            ends.Add(add(word));
        foreach (var word in Split(pieces.Alphabet))
            letters.TryAdd(add(word), word[0] < 0x80 ? word[0] : (char)BareLetters.Of(word[0]));
        foreach (var name in Split(pieces.Names))
            letters[add(name[..^2])] = name[^1];
        foreach (var (i, hour) in Split(clock.Hours).Index())
            hours.TryAdd(add(hour), i + 1);
        foreach (var hour in Split(clock.First))
            hours.TryAdd(add(hour), 1);
        (twice, standing, similes) = (SetOf(pieces.Twice), SetOf(pieces.Stands), SetOf(language.Objects.Similes));
        (tens, down, up) = (SetOf(clock.Ten), SetOf(clock.Down), SetOf(clock.Up));
        pronouns = SetOf(language.Objects.Pronouns);
        alphabet = SetOf("alphabet alphabets abecedario alfabeto abc الأبجدية أبجدية");
        (backwards, left, right) = (SetOf(pieces.Backwards), SetOf(pieces.Left), SetOf(pieces.Right));
        (order, locks, counted) = (SetOf(pieces.Order), SetOf(pieces.Locks), SetOf(pieces.Numbers));
        steps = SetOf(language.Objects.Steps);
        var (initials, letterWords) = (SetOf(pieces.Initials), SetOf(pieces.Letters));
        (later, earlier, otherHand, both, noTime) =
            (SetOf(clock.Later), SetOf(clock.Earlier), SetOf(clock.OtherHand), SetOf(clock.Both), SetOf(clock.NoTime));
        (ordinary, beforeVerb, possessive) =
            (SetOf(OrdinaryNouns.Of(language.Code)), SetOf(language.Objects.BeforeVerb), SetOf(language.Objects.Possessive));
        compounding = SetOf(CompoundNouns.Of(language.Code));
        (containers, holdable) = (SetOf(Containers.Of(language.Code)), SetOf(OrdinaryNouns.Holdable(language.Code)));
        (presenting, particles) = (SetOf(Presenting.Of(language.Code)), SetOf(Presenting.Particles(language.Code)));
        (degrees, having, withArticle) = (SetOf(language.Objects.Degrees), SetOf(language.Objects.Having), SetOf(language.Objects.WithArticle));
        (questions, addressed) = (SetOf(language.Objects.Questions), SetOf(language.Objects.Addressed));
        (tallies, times, rest) = (SetOf(pieces.Tallies), SetOf(pieces.Times), SetOf(pieces.Rest));
        foreach (var name in Split(pieces.Names).Where(_ => language.Code == "ar"))
        {
            // دالان, دالين: two of them.
            foreach (var dual in (string[])["ان", "ين"])
                doubled.TryAdd(add(name[..^2] + dual), name[^1]);
        }

        (indefinite, of) = (SetOf(language.Objects.Indefinite), SetOf(language.Objects.Of));
        HashSet<int> turning =
        [
            .. backwards,
            .. pieces.BackPhrases.Split("; ", StringSplitOptions.RemoveEmptyEntries).Select(phrase => add(phrase.Split(' ')[^1])),
        ];
        Hint(turning, PieceHint.Turning);
        Hint(initials, PieceHint.Initials);
        Hint(letterWords, PieceHint.Letter);
        Hint(SetOf(clock.HourLabel), PieceHint.Hours);
        Hint(SetOf(clock.MinuteLabel), PieceHint.Minutes);

        void Hint(HashSet<int> all, PieceHint hint)
        {
            foreach (var word in all)
            {
                if (word >= hints.Length)
                    Array.Resize(ref hints, word + 1);
                hints[word] |= hint;
            }
        }

        HashSet<int> SetOf(string list) => [.. Split(list).Select(add)];

        static string[] Split(string list) => list.Split(' ', StringSplitOptions.RemoveEmptyEntries);
    }

    /// <summary>1 for "first" and so on, <see cref="Last"/> for "last"; 0 for other words.</summary>
    public int PlaceOf(int word) => places.GetValueOrDefault(word);

    /// <summary>The letter that a word stands for when one spells, or NUL.</summary>
    public char LetterOf(int word) => letters.GetValueOrDefault(word);

    /// <summary>The hour that an ordinal says; 0 for other words.</summary>
    public int HourOf(int word) => hours.GetValueOrDefault(word);

    /// <summary>Whether what comes behind it is the end of a code: <c>finish with</c>.</summary>
    public bool IsEnd(int word) => ends.Contains(word);

    /// <summary>Whether it makes two of a figure.</summary>
    public bool IsTwice(int word) => twice.Contains(word);

    /// <summary>Whether it makes as many of something as the number before it says: <c>two times</c>.</summary>
    public bool IsTimes(int word) => times.Contains(word);

    /// <summary>The letter of which a word says that there are two, or NUL.</summary>
    public char TwoOf(int word) => doubled.GetValueOrDefault(word);

    /// <summary>Whether it stands between a letter and a word that begins with it.</summary>
    public bool IsStanding(int word) => standing.Contains(word);

    /// <summary>Whether a thing behind it is only likened to something.</summary>
    public bool IsSimile(int word) => similes.Contains(word);

    /// <summary>Whether it is the second part of eleven and twelve o’clock.</summary>
    public bool IsTen(int word) => tens.Contains(word);

    /// <summary>Whether it says that a code is told from its end.</summary>
    public bool IsBackwards(int word) => backwards.Contains(word);

    /// <summary>Whether it may say that a code is turned about, or made of first letters. Asked of every word.</summary>
    public PieceHint HintOf(int word) => word >= 0 && word < hints.Length ? hints[word] : PieceHint.None;

    /// <summary>Whether it says where something stands in a row.</summary>
    public bool IsOrder(int word) => order.Contains(word);

    /// <summary>Whether it says that time has passed since an hour.</summary>
    public bool IsLater(int word) => later.Contains(word);

    /// <summary>Whether it says that time passes before an hour.</summary>
    public bool IsEarlier(int word) => earlier.Contains(word);

    /// <summary>Whether it may mean the other of two hands.</summary>
    public bool IsOtherHand(int word) => otherHand.Contains(word);

    /// <summary>Whether it means both of two.</summary>
    public bool IsBoth(int word) => both.Contains(word);

    /// <summary>Whether numbers beside it are no time.</summary>
    public bool IsNoTime(int word) => noTime.Contains(word);

    /// <summary>Whether it is a noun of which any box and any text may be full.</summary>
    public bool IsOrdinary(int word) => ordinary.Contains(word);

    /// <summary>Whether a verb stands behind it: <c>should</c>, <c>to</c>.</summary>
    public bool IsBeforeVerb(int word) => beforeVerb.Contains(word);

    /// <summary>Whether it is an everyday word for a thing that one takes out of a box: <c>hook</c>.</summary>
    public bool IsHoldable(int word) => holdable.Contains(word);

    /// <summary>Whether it says in what, or how much of it, a thing comes: <c>bottle</c>.</summary>
    public bool IsContainer(int word) => containers.Contains(word);

    /// <summary>Whether it puts what follows before the reader: <c>there lies a</c>.</summary>
    public bool IsPresenting(int word) => presenting.Contains(word);

    /// <summary>Whether it says where the thing before it goes: <c>lid off</c>.</summary>
    public bool IsParticle(int word) => particles.Contains(word);

    /// <summary>Whether it says that what follows is something's own: <c>its</c>.</summary>
    public bool IsPossessive(int word) => possessive.Contains(word);

    /// <summary>Whether it is an article of things that aren't known yet.</summary>
    public bool IsIndefinite(int word) => indefinite.Contains(word);

    /// <summary>Whether what follows owns what stands before it.</summary>
    public bool IsOf(int word) => of.Contains(word);

    /// <summary>Whether it speaks of a lock.</summary>
    public bool IsLock(int word) => locks.Contains(word);

    /// <summary>Whether it speaks of numbers that were counted, or of their order.</summary>
    public bool IsNumbers(int word) => counted.Contains(word);

    /// <summary>Whether it names a step of the way: <c>stage</c>, <c>étape</c>.</summary>
    public bool IsStep(int word) => steps.Contains(word);

    /// <summary>Whether it speaks of a thing that was named before.</summary>
    public bool IsPronoun(int word) => pronouns.Contains(word);

    /// <summary>Whether it says how much a thing is so.</summary>
    public bool IsDegree(int word) => degrees.Contains(word);

    /// <summary>Whether it makes another thing of a noun behind it: <c>desfile de faroles</c>.</summary>
    public bool IsCompounding(int word) => compounding.Contains(word);

    /// <summary>Whether what stands before it has what stands behind it.</summary>
    public bool IsHaving(int word) => having.Contains(word);

    /// <summary>Whether it is a preposition with an article in it.</summary>
    public bool HasArticle(int word) => withArticle.Contains(word);

    /// <summary>Whether it means the reader who is told to do something: <c>Sie</c>.</summary>
    public bool IsAddressed(int word) => addressed.Contains(word);

    /// <summary>Whether it asks which thing is meant.</summary>
    public bool IsQuestion(int word) => questions.Contains(word);

    /// <summary>Whether it is a mark that is counted to tell a figure: <c>stroke</c>, <c>notch</c>.</summary>
    public bool IsTally(int word) => tallies.Contains(word);

    /// <summary>Whether it means those that are left: <c>the other two</c>.</summary>
    public bool IsRest(int word) => rest.Contains(word);

    /// <summary>Whether it means the alphabet.</summary>
    public bool IsAlphabet(int word) => alphabet.Contains(word);

    /// <summary>Whether it is the word for left.</summary>
    public bool IsLeft(int word) => left.Contains(word);

    /// <summary>Whether it is the word for right.</summary>
    public bool IsRight(int word) => right.Contains(word);

    /// <summary>Whether a minute hand that points there says half past.</summary>
    public bool IsDown(int word) => down.Contains(word);

    /// <summary>Whether a minute hand that points there says the hour.</summary>
    public bool IsUp(int word) => up.Contains(word);
}

/// <summary>What a word may say of a code besides its pieces.</summary>
[Flags]
internal enum PieceHint : byte
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>It ends a phrase such as "from back to front".</summary>
    Turning = 1,

    /// <summary>It means first letters.</summary>
    Initials = 2,

    /// <summary>It is the word for a letter.</summary>
    Letter = 4,

    /// <summary>It says that a number beside it is an hour.</summary>
    Hours = 8,

    /// <summary>It says that a number beside it is one of minutes.</summary>
    Minutes = 16,
}
