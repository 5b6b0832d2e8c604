package org.amberyard.modelgen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** What the generator does to whole folders. */
final class Folders {

    private Folders() {
    }

    /**
     * Makes sure that a folder exists and holds nothing, so that source of removed classes does not stay behind.
     *
     * @param folder the folder
     * @throws IOException if something in it cannot be deleted
     */
    static void empty(Path folder) throws IOException {
        if (Files.exists(folder)) {
            for (Path entry : contentsFirst(folder)) {
                Files.delete(entry);
            }
        }
        Files.createDirectories(folder);
    }

    private static List<Path> contentsFirst(Path folder) throws IOException {
        try (Stream<Path> entries = Files.walk(folder)) {
            return entries.sorted(Comparator.reverseOrder()).toList();
        }
    }
}
