package org.amberyard.exchange.gtfs;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ProblemList;

/** A schedule in a zip file, its files at the top or all in one folder. */
final class GtfsZip implements GtfsFiles {
    static final long MOST_BYTES = 8L * 1024 * 1024 * 1024;
    private static final int MOST_ENTRIES = 10_000;
    /** Tables of schedules shrink to a tenth or a thirtieth; what shrinks a hundred times more was made to swell. */
    private static final long MOST_SWELLING = 300;
    private static final long SMALL_BYTES = 16L * 1024 * 1024;
    private static final String MARKER = "trips.txt";

    private final ZipFile zip;
    private final String prefix;

    private GtfsZip(ZipFile zip, String prefix) {
        this.zip = zip;
        this.prefix = prefix;
    }

    static GtfsZip open(Path path) throws ImportException {
        String file = path.getFileName().toString();
        ZipFile zip = zip(path, file);
        try {
            return new GtfsZip(zip, prefix(zip, file));
        } catch (ImportException e) {
            closeQuietly(zip, e);
            throw e;
        }
    }

    private static ZipFile zip(Path path, String file) throws ImportException {
        try {
            return new ZipFile(path.toFile());
        } catch (IOException | IllegalArgumentException e) {
            throw ProblemList.refusal(file, 0, "", "The file is no zip file, or it is damaged: " + e.getMessage() + ".");
        }
    }

    private static void closeQuietly(ZipFile zip, Exception cause) {
        try {
            zip.close();
        } catch (IOException e) {
            cause.addSuppressed(e);
        }
    }

    /** Folder in the zip that holds the tables. */
    private static String prefix(ZipFile zip, String file) throws ImportException {
        if (zip.size() > MOST_ENTRIES) {
            throw ProblemList.refusal(file, 0, "", "The zip file has " + zip.size() + " entries; a schedule has at most some dozens.");
        }
        List<String> names = names(zip, file);
        for (String name : names) {
            if (name.startsWith("/") || name.contains("\\") || name.contains(":") || List.of(name.split("/")).contains("..")) {
                throw ProblemList.refusal(file, 0, "", "The zip file has an entry “" + name + "”, whose name leads out of it. "
                        + "Schedules have no such entries.");
            }
        }
        List<String> found = names.stream().filter(n -> n.equals(MARKER) || n.endsWith("/" + MARKER)).toList();
        if (found.size() != 1) {
            throw ProblemList.refusal(file, 0, "", found.isEmpty() ? "The zip file has no trips.txt; is it a GTFS schedule?"
                    : "The zip file has several trips.txt: " + String.join(", ", found) + "; give one schedule at a time.");
        }
        return found.get(0).substring(0, found.get(0).length() - MARKER.length());
    }

    /** Names that are no text are found when they are read, not when the zip is opened. */
    private static List<String> names(ZipFile zip, String file) throws ImportException {
        try {
            return zip.stream().map(ZipEntry::getName).toList();
        } catch (IllegalArgumentException e) {
            throw ProblemList.refusal(file, 0, "", "The zip file is damaged: the name of an entry cannot be read (" + e.getMessage() + ").");
        }
    }

    @Override
    public Optional<InputStream> open(String name) throws IOException {
        ZipEntry entry = zip.getEntry(prefix + name);
        return entry == null || entry.isDirectory() ? Optional.empty()
                : Optional.of(new Swelling(zip.getInputStream(entry), name, entry.getCompressedSize()));
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }

    /** Counts what comes out of the zip, and stops when it is out of all proportion. */
    private static final class Swelling extends FilterInputStream {
        private final String name;
        private final long most;
        private long count;

        Swelling(InputStream in, String name, long packedBytes) {
            super(in);
            this.name = name;
            this.most = Math.min(MOST_BYTES, Math.max(SMALL_BYTES, packedBytes * MOST_SWELLING));
        }

        @Override
        public int read() throws IOException {
            int read = super.read();
            count(read < 0 ? 0 : 1);
            return read;
        }

        @Override
        public int read(byte[] bytes, int from, int length) throws IOException {
            int read = super.read(bytes, from, length);
            count(Math.max(read, 0));
            return read;
        }

        private void count(int read) throws IOException {
            count += read;
            if (count > most) {
                throw new IOException(name + " swells to more than " + most / (1024 * 1024) + " MiB, far more than tables do");
            }
        }
    }
}
