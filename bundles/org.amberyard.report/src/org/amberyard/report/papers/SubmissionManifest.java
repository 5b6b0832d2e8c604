package org.amberyard.report.papers;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.amberyard.model.io.FileSum;

/**
 * The list of a submission's files with their SHA-256, a line each, as {@code sha256sum -c} reads it.
 *
 * @param entries its lines in their order
 * @param sum its own SHA-256
 * @param text the text as it stands in the file
 */
record SubmissionManifest(List<Entry> entries, String sum, String text) {
    static final String NAME = "manifest.sha256";
    private static final String GAP = "  ";

    /**
     * A line.
     *
     * @param sum SHA-256 of the file; empty where the line is none of a manifest
     * @param name name of the file, or the whole line
     */
    record Entry(String sum, String name) {
    }

    /** The text of a manifest. */
    static String of(Map<String, byte[]> files) {
        StringBuilder text = new StringBuilder();
        files.forEach((name, bytes) -> text.append(line(sum(bytes), name)));
        return text.toString();
    }

    private static String line(String sum, String name) {
        return sum + GAP + name + "\n";
    }

    /**
     * Reads the manifest of a submission; text of any encoding is read, so that what is damaged is told and not refused.
     *
     * @throws IOException when it cannot be read
     */
    static SubmissionManifest read(Path folder) throws IOException {
        byte[] bytes = Files.readAllBytes(folder.resolve(NAME));
        String text = new String(bytes, StandardCharsets.UTF_8);
        List<Entry> entries = new ArrayList<>();
        text.lines().forEach(l -> entries.add(entry(l)));
        return new SubmissionManifest(List.copyOf(entries), sum(bytes), text);
    }

    private static Entry entry(String line) {
        int gap = line.indexOf(GAP);
        return gap < 0 ? new Entry("", line) : new Entry(line.substring(0, gap), line.substring(gap + GAP.length()));
    }

    /** True when the text is its lines, and nothing else stands between or around them. */
    boolean isPlain() {
        StringBuilder plain = new StringBuilder();
        entries.forEach(e -> plain.append(e.sum().isEmpty() ? e.name() + "\n" : line(e.sum(), e.name())));
        return plain.toString().equals(text);
    }

    /** SHA-256 in hexadecimal digits. */
    static String sum(byte[] bytes) {
        return FileSum.of(bytes).sha256();
    }
}
