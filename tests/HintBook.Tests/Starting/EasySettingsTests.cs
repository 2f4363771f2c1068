using System.Globalization;
using CsCheck;
using HintBook.Starting.Edition;

namespace HintBook.Tests.Starting;

// What people try first at a lock: common practice, no source.
public class EasySettingsTests
{
    private const string Figures = "0123456789";

    [Theory]
    [InlineData("7777", true)]
    [InlineData("1234", true)]
    [InlineData("4321", true)]
    [InlineData("7890", true)]
    [InlineData("1212", true)]
    [InlineData("1221", true)]
    [InlineData("1987", true)]
    [InlineData("2099", true)]
    [InlineData("2100", false)]
    [InlineData("1357", false)]
    [InlineData("5173", false)]
    [InlineData("11", true)]
    [InlineData("12", false)]
    [InlineData("5", false)]
    public void Settings_that_people_try_first_are_easy(string setting, bool isEasy) => Assert.Equal(isEasy, EasySettings.Holds(setting, Figures));

    [Theory]
    [InlineData("ABC", true)]
    [InlineData("ZAB", true)]
    [InlineData("HUT", false)]
    public void Letters_run_as_the_wheel_has_them(string setting, bool isEasy) =>
        Assert.Equal(isEasy, EasySettings.Holds(setting, "ABCDEFGHIJKLMNOPQRSTUVWXYZ"));

    [Fact]
    public void Of_four_wheels_more_than_nine_settings_in_ten_are_left()
    {
        var easy = Enumerable.Range(0, 10_000)
            .Count(number => EasySettings.Holds(number.ToString("0000", CultureInfo.InvariantCulture), Figures));

        Assert.InRange(easy, 1, 999);
    }

    [Fact]
    public void A_setting_read_from_the_other_end_is_as_easy_but_for_years() =>
        Gen.String[Gen.Char['0', '9'], 3, 3].Sample(setting =>
            EasySettings.Holds(setting, Figures) == EasySettings.Holds(new string([.. setting.Reverse()]), Figures));
}
