#!/bin/sh
# A double click on this file opens HintBook in the browser. Close the page with its button, or this window.
exec "$(dirname "$0")/hintbook" workbench
