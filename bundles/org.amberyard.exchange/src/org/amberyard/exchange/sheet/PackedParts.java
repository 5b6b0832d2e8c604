package org.amberyard.exchange.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * Holds the parts of a workbook against limits before any is read, by unpacking them to nowhere, as the sizes that a file states need not
 * be true. Sheets and shared texts are read as streams; all else, such as formats, is held in memory as a whole.
 */
final class PackedParts {
    private static final long MOST_BYTES = 512L * 1024 * 1024;
    private static final long MOST_HELD_BYTES = 16L * 1024 * 1024;
    private static final List<String> STREAMED = List.of("xl/worksheets/", "xl/sharedStrings");
    private static final int BUFFER_BYTES = 1 << 16;

    private PackedParts() {
    }

    /**
     * Looks into a workbook.
     *
     * @throws TooMuch when a part or all parts are too large
     * @throws IOException when the file is damaged
     */
    static void hold(Path path) throws IOException {
        try (ZipFile zip = new ZipFile(path.toFile())) {
            long left = MOST_BYTES;
            for (ZipEntry entry : zip.stream().filter(PackedParts::isRead).toList()) {
                boolean streamed = STREAMED.stream().anyMatch(entry.getName()::startsWith);
                left -= size(zip, entry, streamed ? left : Math.min(left, MOST_HELD_BYTES));
            }
        }
    }

    /** Pictures and the like are never unpacked. */
    private static boolean isRead(ZipEntry entry) {
        return entry.getName().endsWith(".xml") || entry.getName().endsWith(".rels");
    }

    private static long size(ZipFile zip, ZipEntry entry, long most) throws IOException {
        byte[] buffer = new byte[BUFFER_BYTES];
        long size = 0;
        try (InputStream in = zip.getInputStream(entry)) {
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                size += read;
                if (size > most) {
                    throw new TooMuch("Part " + entry.getName() + " of the workbook unpacks to more than is read; all of them may have 512 MiB, and "
                            + "those beside sheets and texts 16 MiB each. Save the sheets that are needed in a new workbook.");
                }
            }
        }
        return size;
    }
}
