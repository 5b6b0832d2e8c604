package org.amberyard.report.document;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Packs an Office package anew without the times of the clock, so that the same content is the same file. */
public final class SteadyZip {
    private static final LocalDateTime ALWAYS = LocalDateTime.of(2000, 1, 1, 0, 0);

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
