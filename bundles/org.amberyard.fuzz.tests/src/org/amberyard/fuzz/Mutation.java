package org.amberyard.fuzz;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/**
 * A change of some bytes of a file.
 *
 * @param kind what is done there
 * @param from where, as a share of the file
 * @param length how many bytes are meant
 * @param text text that is put there, where one is
 */
record Mutation(Kind kind, double from, int length, String text) {
    private static final int MOST_LENGTH = 60;

    /** What can be done to bytes. */
    enum Kind {
        FLIP, DELETE, INSERT, REPLACE, REPEAT, CUT_OFF, REPLACE_NUMBER
    }

    private static final List<String> TEXTS = List.of("", "-1", "0", "1e308", "1e999", "NaN", "99999999999999999999", "-0.0", "\"", "\"\"",
            "<", ">", "</entry>", "<entry>", "<!DOCTYPE x [<!ENTITY a 'b'>]>", "&a;", "&#0;", "<![CDATA[", "]]>", "\0", "\ufeff", "\ufdfa",
            "\ud83d\ude8c", ",", ",,,,", ";", "\n", "\r", "\t", " ", "24:00:00", "99:59:59", "20260231", "0", "13", "32", "A".repeat(40_000),
            "\n".repeat(500), "1/0", "../", "=1+1", "\u2212 5", "1,5");

    /** Some changes, often few. */
    static Arbitrary<List<Mutation>> some() {
        return Combinators.combine(Arbitraries.of(Kind.class), Arbitraries.doubles().between(0, 1),
                Arbitraries.integers().between(0, MOST_LENGTH), Arbitraries.of(TEXTS)).as(Mutation::new).list().ofMinSize(1).ofMaxSize(8);
    }

    /** The file after changes, one after the other. */
    static byte[] all(byte[] file, List<Mutation> changes) {
        byte[] changed = file;
        for (Mutation change : changes) {
            changed = change.of(changed);
        }
        return changed;
    }

    private byte[] of(byte[] file) {
        int start = Math.min(file.length, (int) (from * file.length));
        int end = Math.min(file.length, start + length);
        return switch (kind) {
            case FLIP -> flipped(file, start, end);
            case DELETE -> joined(file, start, new byte[0], end);
            case INSERT -> joined(file, start, text.getBytes(StandardCharsets.UTF_8), start);
            case REPLACE -> joined(file, start, text.getBytes(StandardCharsets.UTF_8), end);
            case REPEAT -> joined(file, end, Arrays.copyOfRange(file, start, end), end);
            case CUT_OFF -> Arrays.copyOf(file, start);
            case REPLACE_NUMBER -> number(file, start);
        };
    }

    private byte[] flipped(byte[] file, int start, int end) {
        byte[] changed = file.clone();
        for (int i = start; i < end; i += 7) {
            changed[i] ^= (byte) (1 << i % 8);
        }
        return changed;
    }

    /** The next number in the file gives way to the text. */
    private byte[] number(byte[] file, int start) {
        int first = start;
        while (first < file.length && !Character.isDigit(file[first])) {
            first++;
        }
        int last = first;
        while (last < file.length && (Character.isDigit(file[last]) || file[last] == '.')) {
            last++;
        }
        return joined(file, first, text.getBytes(StandardCharsets.UTF_8), last);
    }

    private static byte[] joined(byte[] file, int end, byte[] between, int start) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.write(file, 0, end);
        all.writeBytes(between);
        all.write(file, start, file.length - start);
        return all.toByteArray();
    }
}
