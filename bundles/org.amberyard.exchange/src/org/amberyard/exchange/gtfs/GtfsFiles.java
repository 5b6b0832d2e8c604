package org.amberyard.exchange.gtfs;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ProblemList;

/** The files of a schedule, in a folder or in a zip file. Nothing is unpacked to disk. */
interface GtfsFiles extends Closeable {

    /** Bytes of a file; empty when there is none of this name. */
    Optional<InputStream> open(String name) throws IOException, ImportException;

    /**
     * The files in a folder or a zip file.
     *
     * @throws ImportException when it is neither, or looks hostile
     */
    static GtfsFiles of(Path path) throws ImportException {
        return Files.isDirectory(path) ? new Folder(path) : GtfsZip.open(path);
    }

    /** Files side by side in a folder. */
    record Folder(Path path) implements GtfsFiles {

        @Override
        public Optional<InputStream> open(String name) throws IOException, ImportException {
            Path file = path.resolve(name);
            if (!Files.isRegularFile(file)) {
                return Optional.empty();
            }
            if (Files.size(file) > GtfsZip.MOST_BYTES) {
                throw ProblemList.refusal(name, 0, "", "The file is larger than 8 GiB.");
            }
            return Optional.of(Files.newInputStream(file));
        }

        @Override
        public void close() {
            // Files are closed one by one.
        }
    }
}
