package org.amberyard.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.study.NearWords;

/** What stands near a path at which nothing stands. */
final class NearFiles {
    private static final int MOST = 5000;

    private NearFiles() {
    }

    /** A sentence, with a space before it: the folder that is missing, or the file of the folder that may have been meant; empty for none. */
    static String hint(Path path) {
        Path folder = path.toAbsolutePath().normalize().getParent();
        if (folder == null) {
            return "";
        }
        if (!Files.isDirectory(folder)) {
            return " The folder " + folder + " is missing too." + inside(folder.getParent(), String.valueOf(folder.getFileName()));
        }
        return inside(folder, String.valueOf(path.getFileName()));
    }

    private static String inside(Path folder, String name) {
        if (folder == null || !Files.isDirectory(folder)) {
            return "";
        }
        try (Stream<Path> files = Files.list(folder)) {
            List<String> names = files.limit(MOST).map(f -> f.getFileName().toString()).toList();
            return NearWords.hint(name, names);
        } catch (IOException e) {
            return "";
        }
    }
}
