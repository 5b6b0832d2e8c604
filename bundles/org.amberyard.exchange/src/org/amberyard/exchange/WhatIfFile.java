package org.amberyard.exchange;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.amberyard.study.whatif.RunPart;
import org.amberyard.study.whatif.SavedRun;

/**
 * Keeps what a what-if has found in a file beside its study, {@code STUDY.whatif}: compressed; a mark with the version, the
 * study's fingerprint, the study itself as its own file holds it, then for each part its name, number of results, number of
 * variants, and the results one after the other. The same run gives the same bytes. Files of the first version hold no study.
 */
public final class WhatIfFile {
    private static final String MARK = "Amberyard what-if 2";
    private static final String WITHOUT_STUDY = "Amberyard what-if 1";
    private static final String ENDING = ".whatif";
    private static final int MOST_NUMBERS = 400_000_000;
    private static final int FIRST_ROWS = 65_536;

    private WhatIfFile() {
    }

    /** The file beside a study's file. */
    public static Path beside(Path study) {
        return study.resolveSibling(study.getFileName() + ENDING);
    }

    private static boolean tooMany(int columns, int rows) {
        return (long) columns * Math.max(1, rows) > MOST_NUMBERS;
    }

    /**
     * Writes a run; the file before it stays as it was when that fails.
     *
     * @throws IOException when it cannot be written, or a part is larger than is read again
     */
    public static void write(SavedRun run, Path file) throws IOException {
        if (run.parts().values().stream().anyMatch(part -> part.length > 0 && tooMany(part.length, part[0].length))) {
            throw new IOException("The what-if has more results than " + file + " may hold; they are not kept");
        }
        byte[] study = bytes(run.study(), file);
        Path made = file.resolveSibling(file.getFileName() + ".new");
        try (DataOutputStream out = new DataOutputStream(new BufferedOutputStream(new GZIPOutputStream(Files.newOutputStream(made))))) {
            out.writeUTF(MARK);
            out.writeUTF(run.fingerprint());
            out.writeInt(study.length);
            out.write(study);
            out.writeInt(run.parts().size());
            for (Map.Entry<RunPart, double[][]> part : run.parts().entrySet()) {
                out.writeUTF(part.getKey().name());
                write(part.getValue(), out);
            }
        } catch (IOException e) {
            Files.deleteIfExists(made);
            throw e;
        }
        Files.move(made, file, StandardCopyOption.REPLACE_EXISTING);
    }

    private static byte[] bytes(Optional<Study> study, Path file) throws IOException {
        try {
            return study.isPresent() ? StudyFile.bytes(study.get(), file) : new byte[0];
        } catch (StudyFileException e) {
            throw new IOException(e.getMessage(), e);
        }
    }

    private static void write(double[][] columns, DataOutputStream out) throws IOException {
        out.writeInt(columns.length);
        out.writeInt(columns.length == 0 ? 0 : columns[0].length);
        for (double[] column : columns) {
            for (double value : column) {
                out.writeDouble(value);
            }
        }
    }

    /**
     * Reads a run; empty where there is no file.
     *
     * @throws IOException when the file holds something else, or is cut off
     */
    public static Optional<SavedRun> read(Path file) throws IOException {
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try (DataInputStream in = new DataInputStream(new BufferedInputStream(new GZIPInputStream(Files.newInputStream(file))))) {
            String mark = in.readUTF();
            if (!MARK.equals(mark) && !WITHOUT_STUDY.equals(mark)) {
                throw new IOException(file + " is no what-if of this version; delete it and run the what-if again");
            }
            String fingerprint = in.readUTF();
            Optional<Study> study = MARK.equals(mark) ? study(in, file) : Optional.empty();
            Map<RunPart, double[][]> parts = new EnumMap<>(RunPart.class);
            for (int left = in.readInt(); left > 0; left--) {
                parts.put(part(in.readUTF(), file), columns(in, file));
            }
            if (in.read() >= 0) {
                throw new IOException(file + " goes on behind its end");
            }
            return Optional.of(new SavedRun(fingerprint, parts, study));
        }
    }

    private static Optional<Study> study(DataInputStream in, Path file) throws IOException {
        int length = in.readInt();
        if (length < 0 || length > StudyFile.MAX_BYTES) {
            throw new IOException(file + " claims a study of " + length + " bytes; at most " + StudyFile.MAX_BYTES + " are allowed");
        }
        byte[] bytes = in.readNBytes(length);
        if (bytes.length < length) {
            throw new EOFException(file + " ends in the middle of its study");
        }
        try {
            return length == 0 ? Optional.empty() : Optional.of(StudyFile.of(bytes, file));
        } catch (StudyFileException e) {
            throw new IOException(e.getMessage(), e);
        }
    }

    private static RunPart part(String name, Path file) throws IOException {
        for (RunPart part : RunPart.values()) {
            if (part.name().equals(name)) {
                return part;
            }
        }
        throw new IOException(file + " holds a part “" + name + "” that this version does not know");
    }

    private static double[][] columns(DataInputStream in, Path file) throws IOException {
        int count = in.readInt();
        int rows = in.readInt();
        if (count < 0 || rows < 0 || tooMany(count, rows)) {
            throw new IOException(file + " claims " + count + " results of " + rows + " variants, which is too many");
        }
        List<double[]> columns = new ArrayList<>();
        while (columns.size() < count) {
            columns.add(column(in, rows));
        }
        return columns.toArray(double[][]::new);
    }

    /** Memory is taken as numbers come, so that a file that claims more than it holds takes none for the rest. */
    private static double[] column(DataInputStream in, int rows) throws IOException {
        double[] column = new double[Math.min(rows, FIRST_ROWS)];
        for (int row = 0; row < rows; row++) {
            if (row == column.length) {
                column = Arrays.copyOf(column, (int) Math.min(rows, 2L * row));
            }
            column[row] = in.readDouble();
        }
        return column;
    }
}
