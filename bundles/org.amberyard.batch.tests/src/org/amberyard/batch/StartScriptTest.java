package org.amberyard.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The start script, with a Java that only writes down what it is asked to start. */
class StartScriptTest {
    private static final String PREFERENCES = "amberyard/workspace/.metadata/.plugins/org.eclipse.core.runtime/.settings/org.amberyard.workbench.prefs";

    @TempDir
    private Path folder;

    @BeforeEach
    void prepare() throws Exception {
        assumeTrue(File.separatorChar == '/', "Windows has a script of its own");
        Files.createDirectories(folder.resolve("home/configuration"));
        Path script = Path.of(System.getProperty("basedir", ".")).resolve("../../features/org.amberyard.feature/rootfiles/unix/amberyard").normalize();
        Files.copy(script, folder.resolve("home/amberyard"));
        Path java = Files.createDirectories(folder.resolve("jdk/bin")).resolve("java");
        Files.writeString(java,
                "#!/bin/sh\n[ \"$1\" = -version ] && { echo 'openjdk version \"17.0.1\"' >&2; exit 0; }\nfor word in \"$@\"; do echo \"$word\"; done\n");
        assertTrue(java.toFile().setExecutable(true));
    }

    /** Words that Java is started with, without those of every start. */
    private List<String> started(String... words) throws Exception {
        List<String> command = new ArrayList<>(List.of("sh", folder.resolve("home/amberyard").toString()));
        command.addAll(List.of(words));
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true);
        builder.environment().put("JAVA_HOME", folder.resolve("jdk").toString());
        builder.environment().put("XDG_STATE_HOME", folder.toString());
        builder.environment().keySet().removeIf(name -> name.startsWith("AMBERYARD"));
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes());
        assertTrue(process.waitFor(30, TimeUnit.SECONDS));
        assertEquals(0, process.exitValue(), said);
        List<String> all = said.lines().toList();
        return all.subList(all.indexOf("-nosplash") + 1, all.size());
    }

    private List<String> window(String... words) {
        List<String> all = new ArrayList<>(List.of("-data", folder.resolve("amberyard/workspace").toString()));
        all.addAll(List.of(words));
        return all;
    }

    @Test
    void aLanguageBeforeTheStudyOpensTheWindow() throws Exception {
        assertEquals(window("-nl", "es", "my.amberyard"), started("-nl", "es", "my.amberyard"));
        assertEquals(window("my.amberyard", "-nl", "es"), started("my.amberyard", "-nl", "es"));
        assertEquals(window("-nl", "es"), started("-nl", "es"));
        assertEquals(window(), started());
    }

    @Test
    void aVerbBehindALanguageRunsWithoutAWindow() throws Exception {
        assertEquals(List.of("-data", "@none", "-nl", "es", "bill", "my.amberyard"), started("-nl", "es", "bill", "my.amberyard"));
        assertEquals(List.of("-data", "@none", "paint"), started("paint"));
    }

    /** What is told on the command line counts more than what was chosen in the window. */
    @Test
    void theLanguageOfTheWindowIsToldToThePlatformUnlessAnotherOneIs() throws Exception {
        Path preferences = folder.resolve(PREFERENCES);
        Files.createDirectories(preferences.getParent());
        Files.writeString(preferences, "language=en\n");
        assertEquals(window("my.amberyard", "-nl", "en"), started("my.amberyard"));
        assertEquals(window("-nl", "es", "my.amberyard"), started("-nl", "es", "my.amberyard"));
    }
}
