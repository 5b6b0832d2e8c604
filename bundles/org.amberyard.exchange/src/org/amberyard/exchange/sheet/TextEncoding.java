package org.amberyard.exchange.sheet;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The text of a file whose encoding nobody tells.
 *
 * @param text the text without a byte order mark
 * @param charset encoding that it was read in
 */
record TextEncoding(String text, Charset charset) {
    private static final Charset WESTERN = Charset.forName("windows-1252");
    private static final char BYTE_ORDER_MARK = '\ufeff';

    /**
     * By the byte order mark; else by the zeros of a text in two-byte characters; else UTF-8 where it is well formed, and Windows-1252
     * where it is not.
     *
     * @return empty for what is no text
     */
    static Optional<TextEncoding> of(byte[] bytes) {
        Charset marked = marked(bytes);
        if (marked != null) {
            return decoded(bytes, marked);
        }
        return decoded(bytes, StandardCharsets.UTF_8).or(() -> decoded(bytes, WESTERN));
    }

    /** A text that was never bytes of a file. */
    static TextEncoding known(String text) {
        return new TextEncoding(text.replace("\0", ""), StandardCharsets.UTF_8);
    }

    private static Charset marked(byte[] bytes) {
        int first = at(bytes, 0);
        int second = at(bytes, 1);
        if (first == 0xFE && second == 0xFF || first == 0 && second != 0) {
            return StandardCharsets.UTF_16BE;
        }
        return first == 0xFF && second == 0xFE || first > 0 && second == 0 ? StandardCharsets.UTF_16LE : null;
    }

    private static int at(byte[] bytes, int place) {
        return place < bytes.length ? bytes[place] & 0xFF : -1;
    }

    private static Optional<TextEncoding> decoded(byte[] bytes, Charset charset) {
        try {
            String text = charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            String bare = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
            return bare.indexOf('\0') >= 0 ? Optional.empty() : Optional.of(new TextEncoding(bare, charset));
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }

    /** True for an encoding that had to be guessed. */
    boolean isGuessed() {
        return charset.equals(WESTERN);
    }
}
