package org.amberyard.modelgen;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/**
 * A hash over the content of the Ecore files and of the generator itself: the generated source depends on nothing
 * else. File times are left out, because a fresh clone or a switched branch changes them for no reason.
 */
record Fingerprint(String value) {

    /**
     * Computes the fingerprint of a run.
     *
     * @param inputs the files that are generated from
     * @return their fingerprint together with the generator's
     * @throws IOException if a file cannot be read
     */
    static Fingerprint of(List<Path> inputs) throws IOException {
        MessageDigest digest = sha256();
        for (Path file : inputs) {
            add(file, digest);
        }
        for (Path file : generatorFiles()) {
            add(file, digest);
        }
        return new Fingerprint(HexFormat.of().formatHex(digest.digest()));
    }

    /**
     * Tells whether a stamp file holds this fingerprint.
     *
     * @param stamp the file, which may be missing
     * @return true if it does
     * @throws IOException if the file cannot be read
     */
    boolean matches(Path stamp) throws IOException {
        return Files.exists(stamp) && Files.readString(stamp).equals(value);
    }

    /**
     * Leaves this fingerprint in a stamp file.
     *
     * @param stamp the file
     * @throws IOException if it cannot be written
     */
    void writeTo(Path stamp) throws IOException {
        Files.createDirectories(stamp.toAbsolutePath().getParent());
        Files.writeString(stamp, value);
    }

    private static void add(Path file, MessageDigest digest) throws IOException {
        digest.update(file.getFileName().toString().getBytes(UTF_8));
        digest.update(Files.readAllBytes(file));
    }

    /** The generator's jar, or its class files when the build stopped before packaging. */
    private static List<Path> generatorFiles() throws IOException {
        Path code = generatorLocation();
        try (Stream<Path> files = Files.walk(code)) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private static Path generatorLocation() {
        try {
            return Path.of(Fingerprint.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
