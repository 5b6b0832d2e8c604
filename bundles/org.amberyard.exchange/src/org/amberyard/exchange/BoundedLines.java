package org.amberyard.exchange;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The lines of a text, one at a time and each of bounded length, so that no file fills the memory. Bytes are UTF-8, or UTF-16
 * where the file begins with its mark; other bytes are refused.
 */
public final class BoundedLines implements Closeable {
    /** Far longer than a row of any table that is read so. */
    private static final int MOST_CHARS = 32 * 1024;
    private static final int MARK_BYTES = 3;

    private final Reader reader;
    private final String file;
    private final StringBuilder line = new StringBuilder();
    private final char[] buffer = new char[8192];
    private int at;
    private int end;
    private int row;
    private boolean skipFeed;

    /**
     * @param in bytes of the text; closed with the lines
     * @param file name of the file, for messages
     * @throws IOException when nothing can be read
     */
    public BoundedLines(InputStream in, String file) throws IOException {
        this(in, file, Optional.empty());
    }

    /** Lines in a charset that is known, where the file bears no mark of another. */
    public BoundedLines(InputStream in, String file, Optional<Charset> known) throws IOException {
        PushbackInputStream marked = new PushbackInputStream(in, MARK_BYTES);
        Charset charset = charset(marked).or(() -> known).orElse(StandardCharsets.UTF_8);
        this.reader = new InputStreamReader(marked, charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT));
        this.file = file;
    }

    /** The charset that a mark tells, which is taken away. */
    private static Optional<Charset> charset(PushbackInputStream in) throws IOException {
        byte[] mark = in.readNBytes(MARK_BYTES);
        int first = mark.length > 1 ? (mark[0] & 0xff) << 8 | mark[1] & 0xff : 0;
        if (first == 0xfeff || first == 0xfffe) {
            in.unread(mark, 2, mark.length - 2);
            return Optional.of(first == 0xfeff ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_16LE);
        }
        if (first == 0xefbb && mark.length == MARK_BYTES && (mark[2] & 0xff) == 0xbf) {
            return Optional.of(StandardCharsets.UTF_8);
        }
        in.unread(mark);
        return Optional.empty();
    }

    /**
     * The next line without its end; empty after the last.
     *
     * @throws IOException when the file cannot be read
     * @throws ImportException when the line is too long or no text of the charset
     */
    public Optional<String> next() throws IOException, ImportException {
        row++;
        line.setLength(0);
        try {
            int c = read();
            if (skipFeed && c == '\n') {
                c = read();
            }
            skipFeed = false;
            if (c < 0) {
                return Optional.empty();
            }
            for (; c >= 0 && c != '\n' && c != '\r'; c = read()) {
                add((char) c);
            }
            skipFeed = c == '\r';
            return Optional.of(line.toString());
        } catch (MalformedInputException e) {
            throw ProblemList.refusal(file, row, "", "The file is not UTF-8 text near this row; save it again as UTF-8.");
        }
    }

    private int read() throws IOException {
        if (at == end) {
            at = 0;
            end = Math.max(0, reader.read(buffer));
            if (end == 0) {
                return -1;
            }
        }
        return buffer[at++];
    }

    private void add(char c) throws ImportException {
        if (line.length() == MOST_CHARS) {
            throw ProblemList.refusal(file, row, "", "The row is longer than 32,768 characters; is a line end or quote missing?");
        }
        line.append(c);
    }

    /** Number of the line that was read last, from 1. */
    public int row() {
        return row;
    }

    @Override
    public void close() throws IOException {
        reader.close();
    }
}
