using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>One page before it is rendered.</summary>
/// <param name="Path">Its file name in the site.</param>
/// <param name="Template">The template that makes it.</param>
/// <param name="Shape">Which optional parts of the template it uses: two pages of one shape differ only in their texts.</param>
/// <param name="Names">Makes the names that the template uses.</param>
internal sealed record SitePage(string Path, string Template, string Shape, Func<ScriptObject> Names);
