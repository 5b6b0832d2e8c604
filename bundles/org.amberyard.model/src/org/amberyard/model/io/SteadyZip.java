package org.amberyard.model.io;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Packs an Office package anew without the times of the clock, so that the same content is the same file. */
public final class SteadyZip {
    /** When all that the program writes is said to have been made: 1 January 2000 in UTC, in milliseconds. */
    public static final long ALWAYS_MS = 946_684_800_000L;
    private static final LocalDateTime ALWAYS = LocalDateTime.ofEpochSecond(ALWAYS_MS / 1000, 0, ZoneOffset.UTC);

    private SteadyZip() {
    }

    /** The same entries in the same order, all of one time. */
    public static byte[] of(byte[] packed) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(packed.length);
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(packed)); ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                ZipEntry steady = new ZipEntry(entry.getName());
                steady.setTimeLocal(ALWAYS);
                out.putNextEntry(steady);
                in.transferTo(out);
                out.closeEntry();
            }
        }
        return bytes.toByteArray();
    }
}
