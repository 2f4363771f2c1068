<#
.SYNOPSIS
  Everything a contributor does with the project, one task at a time.
.DESCRIPTION
  soak runs the tests for long: laws are tried on twenty times as many cases, all of them fresh, and the browser reads more of every page.
  After that it kills publishes, fills disks and damages files (tests/HintBook.Benchmarks, underload); that takes hours on two cores, and Ctrl-C ends it
  with what has been tried so far. One part of it: dotnet run --project tests/HintBook.Benchmarks -c Release -- underload kills 20
  A case that breaks a law is printed with its seed; put it into the law's test (seed: "…"), so that every run tries it from then on.
.EXAMPLE
  dotnet tool restore; dotnet pwsh build.ps1 test
#>
param(
  [Parameter(Position = 0)]
  [ValidateSet('build', 'test', 'soak', 'example', 'bench', 'pack')]
  [string] $Task = 'build'
)

$ErrorActionPreference = 'Stop'
$PSNativeCommandUseErrorActionPreference = $true
Set-Location $PSScriptRoot

switch ($Task) {
  'build' { dotnet build HintBook.sln -c Release }
  'test' { dotnet test HintBook.sln -c Release }
  'soak' {
    $before = $env:HINTBOOK_SOAK
    try {
      $env:HINTBOOK_SOAK ??= '20'
      dotnet test HintBook.sln -c Release
      dotnet run --project tests/HintBook.Benchmarks -c Release -- underload
    }
    finally {
      $env:HINTBOOK_SOAK = $before
    }
  }
  'example' { dotnet run --project src/HintBook.Cli -c Release -- publish content-example }
  'bench' { dotnet run --project tests/HintBook.Benchmarks -c Release }
  'pack' { dotnet pack src/HintBook.Cli -c Release -o artifacts }
}
