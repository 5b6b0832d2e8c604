package org.amberyard.exchange;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * XML as characters: its encoding is told by its first bytes, else by its declaration, else it is UTF-8, as in appendix F of XML 1.0. The
 * parser of the JDK is not given bytes, because it prints what is wrong with them to the console.
 */
final class XmlText {
    private static final int HEAD = 256;
    private static final Pattern DECLARED = Pattern.compile("^\\s*<\\?xml[^>]*?encoding\\s*=\\s*[\"']([A-Za-z][A-Za-z0-9._-]*)[\"']");
    private static final char MARK = '\ufeff';

    private XmlText() {
    }

    /** Reads a stream, which the reader closes; bytes that stand for no character end in an {@link IOException}. */
    static Reader of(InputStream bytes) throws IOException {
        BufferedInputStream in = new BufferedInputStream(bytes);
        in.mark(HEAD);
        byte[] head = in.readNBytes(HEAD);
        in.reset();
        Reader text = new InputStreamReader(in, encoding(head).newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT));
        return withoutMark(text);
    }

    private static Charset encoding(byte[] head) throws IOException {
        if (head.length >= 2) {
            int first = (head[0] & 0xff) << 8 | head[1] & 0xff;
            if (first == MARK || first == '<') {
                return StandardCharsets.UTF_16BE;
            }
            if (first == 0xfffe || first == '<' << 8) {
                return StandardCharsets.UTF_16LE;
            }
        }
        Matcher declared = DECLARED.matcher(new String(head, StandardCharsets.ISO_8859_1));
        try {
            return declared.find() ? Charset.forName(declared.group(1)) : StandardCharsets.UTF_8;
        } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
            throw new IOException("its encoding “" + declared.group(1) + "” is not known; save it as UTF-8.", e);
        }
    }

    /** The same without a mark at its start that only tells the order of bytes. */
    private static Reader withoutMark(Reader text) throws IOException {
        PushbackReader marked = new PushbackReader(text);
        int first = marked.read();
        if (first >= 0 && first != MARK) {
            marked.unread(first);
        }
        return marked;
    }
}
