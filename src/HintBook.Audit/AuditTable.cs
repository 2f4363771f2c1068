using System.Collections.Immutable;

namespace HintBook.Audit;

/// <summary>Who may see what: plain words for plain files, so that the audit depends on nothing that made them.</summary>
/// <param name="Rules">A file keeps every rule that names it.</param>
public sealed record AuditTable(ImmutableArray<AuditRule> Rules);

/// <summary>
/// What some files must not say. Words are found whatever their letter case, accents and punctuation, and only whole:
/// <c>hive tool</c> is found in <c>HIVE-TOOL</c>, and not in <c>hive tools</c> or <c>archive tool</c>.
/// </summary>
/// <param name="Files">A path in the site with forward slashes, in which <c>*</c> stands for any letters, slashes too.</param>
/// <param name="NotOutside">
/// Words that may not be met without opening the page's folds: in its title, its <c>meta</c> values, the addresses it links to,
/// its file name, and in <c>alt</c>, <c>title</c>, <c>aria-label</c> and other attributes that stand outside closed <c>details</c>.
/// </param>
/// <param name="NotShown">Words that may not stand in the text that is visible while nothing has been opened.</param>
public sealed record AuditRule(string Files, ImmutableArray<string> NotOutside, ImmutableArray<string> NotShown);
