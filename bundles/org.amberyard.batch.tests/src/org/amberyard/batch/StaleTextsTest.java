package org.amberyard.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class StaleTextsTest {
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final Console console = new Console(Path.of("."), System.out, new PrintStream(err, true, StandardCharsets.UTF_8), null);

    @Test
    void aTableThatCannotBeMadeIsSaidAndKeepsNothingBack() {
        assertEquals(List.of("a"), StaleTexts.found(() -> List.of("a"), console));
        assertEquals("", err.toString(StandardCharsets.UTF_8));
        assertEquals(List.of(), StaleTexts.found(() -> {
            throw new IllegalStateException("T4a has no column Total");
        }, console));
        assertEquals("Whether texts that were given out have other figures now cannot be told: T4a has no column Total",
                err.toString(StandardCharsets.UTF_8).strip());
    }
}
