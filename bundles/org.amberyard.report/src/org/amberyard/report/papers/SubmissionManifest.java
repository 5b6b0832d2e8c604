package org.amberyard.report.papers;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

/** The list of a submission's files with their SHA-256, a line each, as {@code sha256sum -c} reads it. */
final class SubmissionManifest {
    static final String NAME = "manifest.sha256";
    private static final String GAP = "  ";

    private SubmissionManifest() {
    }

    static String of(Map<String, byte[]> files) {
        StringBuilder text = new StringBuilder();
        files.forEach((name, bytes) -> text.append(sum(bytes)).append(GAP).append(name).append("\n"));
        return text.toString();
    }

    /** What is no longer as it was frozen; empty when nothing has been touched. */
    static List<String> broken(Path folder) throws IOException {
        List<String> broken = new ArrayList<>();
        for (String line : Files.readString(folder.resolve(NAME), StandardCharsets.UTF_8).lines().toList()) {
            int gap = line.indexOf(GAP);
            Path file = folder.resolve(gap < 0 ? line : line.substring(gap + GAP.length())).normalize();
            if (gap < 0 || !folder.normalize().equals(file.getParent())) {
                broken.add(NAME + " has a line that names no file: " + line);
            } else if (!Files.isRegularFile(file)) {
                broken.add(file.getFileName() + " is missing.");
            } else if (!sum(Files.readAllBytes(file)).equals(line.substring(0, gap))) {
                broken.add(file.getFileName() + " is not as it was frozen: its SHA-256 is another.");
            }
        }
        return broken;
    }

    private static String sum(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
