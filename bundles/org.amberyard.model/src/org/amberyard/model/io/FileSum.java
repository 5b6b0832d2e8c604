package org.amberyard.model.io;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What a file holds, in a number by which a change is noticed. Times do not tell: clocks are put back and forward, and some disks
 * count in whole seconds.
 *
 * @param sha256 SHA-256 of its bytes in hexadecimal digits; empty where there is no file, or none that can be read
 */
public record FileSum(String sha256) {
    /** No file. */
    public static final FileSum NONE = new FileSum("");

    /** Of a file as it is now; {@link #NONE} also for null. */
    public static FileSum of(Path file) {
        try {
            return file == null ? NONE : of(Files.readAllBytes(file));
        } catch (IOException e) {
            // Missing, or not to be read: then nothing is known of it.
            return NONE;
        }
    }

    /** Of what a file holds. */
    public static FileSum of(byte[] content) {
        try {
            return new FileSum(HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }

    /** True where there is a file. */
    public boolean isKnown() {
        return !equals(NONE);
    }
}
