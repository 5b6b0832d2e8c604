package org.amberyard.report;

import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.amberyard.core.whatif.Block;
import org.amberyard.core.whatif.BlockSink;

/**
 * The file of a sweep while it is written: rows go to {@code FILE.part}, and how far these are good to {@code FILE.part.at}, so that
 * a sweep that was stopped, even by the machine, is gone on with and ends with the bytes of one that was not. The file itself stays
 * as it was until the last row is written. A name that ends in {@code .csv} is text, any other column by column.
 */
public final class SweepFile implements BlockSink, Closeable {
    private static final long MARKED_EVERY_NANOS = 5_000_000_000L;

    private final Path file;
    private final Path part;
    private final String fingerprint;
    private final FileChannel channel;
    private final SweepRows rows;
    private final int before;
    private int draws;
    private long markedNanos = System.nanoTime();
    private boolean open = true;

    private SweepFile(Path file, String fingerprint, List<String> columns) throws IOException {
        this.file = file;
        this.fingerprint = fingerprint;
        this.part = part(file);
        Optional<SweepMark> mark = SweepMark.read(mark(file)).filter(m -> m.isOf(fingerprint, part));
        this.before = mark.map(SweepMark::draws).orElse(0);
        this.draws = before;
        this.channel = FileChannel.open(part, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        channel.truncate(mark.map(SweepMark::bytes).orElse(0L)).position(channel.size());
        this.rows = file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".csv") ? new SweepCsv(Channels.newOutputStream(channel))
                : new SweepColumns(Channels.newOutputStream(channel), before);
        if (mark.isEmpty()) {
            rows.begin(columns);
        }
    }

    /**
     * Begins a file, or goes on with what an earlier sweep has left of it.
     *
     * @param fingerprint of the study and its draws; rows of another are thrown away
     * @param columns headers
     */
    public static SweepFile of(Path file, String fingerprint, List<String> columns) throws IOException {
        return new SweepFile(file, fingerprint, columns);
    }

    private static Path part(Path file) {
        return file.resolveSibling(file.getFileName() + ".part");
    }

    private static Path mark(Path file) {
        return file.resolveSibling(file.getFileName() + ".part.at");
    }

    /** Rows that an earlier sweep has left, with which it goes on. */
    public int before() {
        return before;
    }

    /** Where rows stand until all are written. */
    public Path partly() {
        return part;
    }

    /** @throws UncheckedIOException when the file cannot be written on */
    @Override
    public boolean take(Block block) {
        rows.take(block);
        draws = block.endDraw();
        if (System.nanoTime() - markedNanos > MARKED_EVERY_NANOS) {
            try {
                mark();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return false;
    }

    private void mark() throws IOException {
        rows.flush();
        channel.force(false);
        new SweepMark(fingerprint, draws, channel.size()).write(mark(file));
        markedNanos = System.nanoTime();
    }

    /** All rows are written: the file gets its name. */
    public void end() throws IOException {
        rows.end();
        open = false;
        channel.close();
        Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        Files.deleteIfExists(mark(file));
    }

    /** A row cannot be worked out, so that nobody will go on: nothing is kept. */
    public void drop() throws IOException {
        open = false;
        channel.close();
        Files.deleteIfExists(mark(file));
        Files.deleteIfExists(part);
    }

    /** Keeps what has been written, to go on with. */
    @Override
    public void close() throws IOException {
        if (open) {
            mark();
            channel.close();
        }
    }
}
