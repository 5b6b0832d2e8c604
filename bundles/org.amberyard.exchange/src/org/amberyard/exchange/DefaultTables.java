package org.amberyard.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.amberyard.model.study.Study;

/** Tables that come with the program, in a folder beside this class, with a table of their sources. */
final class DefaultTables {
    private static final String SOURCES = "sources.csv";

    private final String folder;
    private final List<String> files = new ArrayList<>(List.of(SOURCES));

    DefaultTables(String folder, String... tables) {
        this.folder = folder;
        for (String table : tables) {
            files.add(table + ".csv");
        }
    }

    /** A study that holds nothing but the tables. */
    Study read() {
        try {
            Path unpacked = Files.createTempDirectory(folder);
            try {
                for (String file : files) {
                    unpack(file, unpacked.resolve(file));
                }
                return StudyFolderImport.read(unpacked);
            } finally {
                for (String file : files) {
                    Files.deleteIfExists(unpacked.resolve(file));
                }
                Files.delete(unpacked);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ImportException e) {
            throw new IllegalStateException(e.getMessage(), e);
        }
    }

    private void unpack(String file, Path target) throws IOException {
        try (InputStream in = DefaultTables.class.getResourceAsStream(folder + "/" + file)) {
            Files.copy(in, target);
        }
    }
}
