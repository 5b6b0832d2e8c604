package org.amberyard.report;

import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.amberyard.core.whatif.Block;
import org.amberyard.core.whatif.BlockSink;

/** Writes rows of a sweep as comma-separated values as they come; numbers in full. */
public final class SweepCsv implements BlockSink, Closeable {
    private final Writer out;

    /** Begins a file with a header line. */
    public SweepCsv(Path file, List<String> columns) throws IOException {
        out = Files.newBufferedWriter(file, StandardCharsets.UTF_8);
        out.write("Draw");
        for (String column : columns) {
            out.write(",\"" + column.replace("\"", "\"\"") + "\"");
        }
        out.write('\n');
    }

    /** @throws UncheckedIOException when the file cannot be written on */
    @Override
    public boolean take(Block block) {
        try {
            StringBuilder line = new StringBuilder();
            for (int row = 0; row < block.draws(); row++) {
                line.setLength(0);
                line.append(block.firstDraw() + row);
                for (double[] column : block.columns()) {
                    line.append(',').append(column[row]);
                }
                out.append(line.append('\n'));
            }
            return false;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}
