#!/bin/sh
# Starts Amberyard from the Finder or a terminal. The window toolkit of macOS insists on the first thread.
AMBERYARD_WINDOW_OPTIONS=-XstartOnFirstThread
export AMBERYARD_WINDOW_OPTIONS
exec "$(dirname "$0")/amberyard" "$@"
