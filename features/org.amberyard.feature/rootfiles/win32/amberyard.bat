@echo off
rem Starts Amberyard: the window without a verb, a run without a window with one.
rem   amberyard [-nl LANGUAGE] [STUDY]
rem   amberyard evaluate^|check^|import ... (see amberyard --help)
setlocal
set "JAVA=java"
set "JAVAW=javaw"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" (
  set "JAVA=%JAVA_HOME%\bin\java"
  set "JAVAW=%JAVA_HOME%\bin\javaw"
)
"%JAVA%" -version >nul 2>nul
if errorlevel 1 (
  echo Amberyard needs Java 17 or newer; set JAVA_HOME or install it. 1>&2
  exit /b 3
)
for %%J in ("%~dp0plugins\org.eclipse.equinox.launcher_*.jar") do set "LAUNCHER=%%~fJ"
rem The language may be told to the platform before the study or the verb as well as behind it.
set "VERB=%~1"
if /i "%VERB%"=="-nl" set "VERB=%~3"
if /i "%VERB%"=="evaluate" goto headless
if /i "%VERB%"=="check" goto headless
if /i "%VERB%"=="import" goto headless
rem Whatever is not a study is taken for a verb, so that a mistyped one gets an answer instead of a window.
if "%VERB%"=="" goto window
if exist "%VERB%" goto window
for %%F in ("%VERB%") do if /i "%%~xF"==".amberyard" goto window
goto headless

:window
rem The platform reads its texts before the program runs, so the language chosen in the window is told to it here.
set "WORKSPACE=%LOCALAPPDATA%\Amberyard\workspace"
set "SPOKEN="
set "TOLD="
for %%W in (%*) do if /i "%%~W"=="-nl" set "TOLD=yes"
if not defined TOLD for /f "tokens=2 delims==" %%L in ('findstr /b /r "language=[a-z][a-z]" "%WORKSPACE%\.metadata\.plugins\org.eclipse.core.runtime\.settings\org.amberyard.workbench.prefs" 2^>nul') do if not "%%L"=="system" set "SPOKEN=-nl %%L"
start "" "%JAVAW%" %AMBERYARD_JAVA_OPTIONS% -Djava.awt.headless=true -jar "%LAUNCHER%" %SPOKEN% -nosplash -data "%WORKSPACE%" %*
exit /b 0

:headless
rem Nobody waits for a moment of a run without a window, so its memory is collected by what costs least in all.
set "COLLECTOR=-XX:+UseParallelGC"
rem Java refuses two collectors, so one that was asked for anywhere stays.
set 2>nul | findstr /r /i "^AMBERYARD_JAVA_OPTIONS=.*GC ^JAVA_TOOL_OPTIONS=.*GC ^JDK_JAVA_OPTIONS=.*GC ^_JAVA_OPTIONS=.*GC" >nul && set "COLLECTOR="
"%JAVA%" %COLLECTOR% %AMBERYARD_JAVA_OPTIONS% -Djava.awt.headless=true -jar "%LAUNCHER%" -application org.amberyard.batch.headless -nosplash -data @none %*
exit /b %ERRORLEVEL%
