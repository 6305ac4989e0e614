@echo off
rem Starts Icequill with the system's Java, 21 or newer: JAVA_HOME's, or the one on the PATH.
setlocal
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
"%JAVA%" --version >nul 2>&1
if errorlevel 1 (
    echo Icequill needs Java 21 or newer. Install one, or let JAVA_HOME name it. 1>&2
    exit /b 2
)
"%JAVA%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 --enable-native-access=ALL-UNNAMED -Dfile.encoding=UTF-8 -Djava.awt.headless=true "-Djava.util.logging.config.file=%~dp0..\lib\logging.properties" -cp "%~dp0..\lib\*" icequill.cli.Main %*
exit /b %ERRORLEVEL%
