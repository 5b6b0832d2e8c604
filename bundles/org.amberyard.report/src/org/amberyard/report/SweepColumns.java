package org.amberyard.report;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.amberyard.core.whatif.Block;

/**
 * Writes rows of a sweep column by column in blocks, so that programs read them fast. All numbers are little-endian. The file
 * begins with the eight bytes {@code AMBCOLS2}, the number of columns (32-bit integer), and each column's header (32-bit length
 * in bytes, then UTF-8). Blocks follow: number of rows (32-bit integer), then for each column that many 64-bit floating-point
 * numbers. Rows are in the order of the draws, from draw 0 on. A block of no rows and the number of all rows (64-bit integer) end
 * the file; without them it was broken off.
 */
final class SweepColumns implements SweepRows {
    private static final String MARK = "AMBCOLS2";

    private final OutputStream out;
    private long rows;

    /**
     * @param file where rows are written
     * @param before rows that stand there already
     */
    SweepColumns(OutputStream file, long before) {
        out = new BufferedOutputStream(file);
        rows = before;
    }

    @Override
    public void begin(List<String> columns) throws IOException {
        out.write(MARK.getBytes(StandardCharsets.US_ASCII));
        write(columns.size());
        for (String column : columns) {
            byte[] header = column.getBytes(StandardCharsets.UTF_8);
            write(header.length);
            out.write(header);
        }
    }

    private void write(int number) throws IOException {
        out.write(ByteBuffer.allocate(Integer.BYTES).order(ByteOrder.LITTLE_ENDIAN).putInt(number).array());
    }

    /** @throws UncheckedIOException when the file cannot be written on */
    @Override
    public boolean take(Block block) {
        try {
            write(block.draws());
            rows += block.draws();
            for (double[] column : block.columns()) {
                ByteBuffer bytes = ByteBuffer.allocate(column.length * Double.BYTES).order(ByteOrder.LITTLE_ENDIAN);
                bytes.asDoubleBuffer().put(column);
                out.write(bytes.array());
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
        write(0);
        out.write(ByteBuffer.allocate(Long.BYTES).order(ByteOrder.LITTLE_ENDIAN).putLong(rows).array());
        out.flush();
    }
}
