package org.amberyard.workbench.handlers;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;

/** The studies that were opened last, newest first. */
public final class RecentStudies {

    private static final String NODE = "org.amberyard.workbench";
    private static final String KEY = "recentStudies";
    private static final int MOST = 8;

    private RecentStudies() {
    }

    /** Files that are still there. */
    public static List<Path> list() {
        return all().stream().filter(Files::isRegularFile).toList();
    }

    private static List<Path> all() {
        return Stream.of(node().get(KEY, "").split("\n")).filter(s -> !s.isBlank()).map(Path::of).toList();
    }

    /** Puts a file first. */
    public static void remember(Path file) {
        List<Path> files = new ArrayList<>(all());
        files.remove(file);
        files.add(0, file);
        store(files);
    }

    static void forget(Path file) {
        List<Path> files = new ArrayList<>(all());
        files.remove(file);
        store(files);
    }

    private static void store(List<Path> files) {
        node().put(KEY, String.join("\n", files.stream().limit(MOST).map(Path::toString).toList()));
        try {
            node().flush();
        } catch (BackingStoreException e) {
            // A list that is forgotten harms nobody.
            ILog.of(RecentStudies.class).warn(e.getMessage(), e);
        }
    }

    private static IEclipsePreferences node() {
        return InstanceScope.INSTANCE.getNode(NODE);
    }
}
