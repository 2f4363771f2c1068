<#
.SYNOPSIS
  Everything a contributor does with the project, one task at a time.
.DESCRIPTION
  soak runs the tests for long: laws are tried on twenty times as many cases, all of them fresh, and the browser reads more of every page.
  After that it kills publishes, fills disks and damages files (tests/HintBook.Benchmarks, underload); that takes hours on two cores, and Ctrl-C ends it
  with what has been tried so far. One part of it: dotnet run --project tests/HintBook.Benchmarks -c Release -- underload kills 20
  pack makes the tool's packages, one for each system and one for any other, with the code of each system made beforehand. release makes what makers
  download: for each system one file that needs no .NET, in a zip with the licences and a bill of materials, and a list of checksums (npm must be
  there, for typefaces and licence texts). Both lie in the folder artifacts; what they are built from lies in artifacts/build.
  A case that breaks a law is printed with its seed; put it into the law's test (seed: "…"), so that every run tries it from then on.
.EXAMPLE
  dotnet tool restore; dotnet pwsh build.ps1 test
#>
param(
  [Parameter(Position = 0)]
  [ValidateSet('build', 'test', 'soak', 'example', 'bench', 'pack', 'release')]
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
  'pack' {
    $build = '-p:ForRelease=true', '--artifacts-path', "$PSScriptRoot/artifacts/build"
    dotnet restore src/HintBook.Cli @build
    dotnet pack src/HintBook.Cli --no-restore -c Release -o artifacts/packages @build
  }
  'release' {
    $build = '-p:ForRelease=true', '--artifacts-path', "$PSScriptRoot/artifacts/build"
    dotnet restore src/HintBook.Cli @build
    Remove-Item artifacts/published, artifacts/release -Recurse -Force -ErrorAction Ignore
    foreach ($system in 'linux-x64', 'osx-arm64', 'win-x64') {
      dotnet publish src/HintBook.Cli --no-restore -c Release -r $system --self-contained -p:PublishSingleFile=true -o artifacts/published/$system @build
    }
    # The texts of licences by their SPDX names (a list under CC0-1.0).
    New-Item artifacts/licences -ItemType Directory -Force | Out-Null
    Push-Location artifacts/licences
    npm pack spdx-license-list@6.12.0 --silent
    tar -xzf spdx-license-list-6.12.0.tgz
    Pop-Location
    $assets = 'artifacts/build/obj/HintBook.Cli/project.assets.json'
    dotnet run --project src/HintBook.Release -c Release -- $assets artifacts/licences/package artifacts/published artifacts/release
  }
}
