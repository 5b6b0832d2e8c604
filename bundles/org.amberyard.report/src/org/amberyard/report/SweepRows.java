package org.amberyard.report;

import java.io.IOException;
import java.util.List;
import org.amberyard.core.whatif.BlockSink;

/** Writes the rows of a sweep in a format, block by block. */
interface SweepRows extends BlockSink {

    /** Writes what stands before the first row. */
    void begin(List<String> columns) throws IOException;

    /** Hands all that was taken on to the file. */
    void flush() throws IOException;

    /** Writes what stands behind the last row. */
    void end() throws IOException;
}
