package org.amberyard.report;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.amberyard.core.whatif.Block;

/** Writes rows of a sweep as comma-separated values as they come; numbers in full. */
final class SweepCsv implements SweepRows {
    private final Writer out;

    SweepCsv(OutputStream file) {
        out = new BufferedWriter(new OutputStreamWriter(file, StandardCharsets.UTF_8));
    }

    @Override
    public void begin(List<String> columns) throws IOException {
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
    public void flush() throws IOException {
        out.flush();
    }

    @Override
    public void end() throws IOException {
        out.flush();
    }
}
