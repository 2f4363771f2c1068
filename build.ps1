<#
.SYNOPSIS
  Everything a contributor does with the project, one task at a time.
.EXAMPLE
  dotnet tool restore; dotnet pwsh build.ps1 test
#>
param(
  [Parameter(Position = 0)]
  [ValidateSet('build', 'test', 'example', 'bench', 'pack')]
  [string] $Task = 'build'
)

$ErrorActionPreference = 'Stop'
$PSNativeCommandUseErrorActionPreference = $true
Set-Location $PSScriptRoot

switch ($Task) {
  'build' { dotnet build HintBook.sln -c Release }
  'test' { dotnet test HintBook.sln -c Release }
  'example' { dotnet run --project src/HintBook.Cli -c Release -- publish content-example }
  'bench' { dotnet run --project tests/HintBook.Benchmarks -c Release }
  'pack' { dotnet pack src/HintBook.Cli -c Release -o artifacts }
}
