package org.amberyard.exchange.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ImportProblem;

/** Reads the sheets of a workbook (XLSX) or of a delimited text, whatever the name of the file ends in. */
public final class SheetReader {
    /** Most bytes of a file. */
    static final long MOST_BYTES = 64L * 1024 * 1024;
    /** Most rows in which something stands. */
    static final int MOST_ROWS = 100_000;
    /** Most columns. */
    static final int MOST_COLUMNS = 300;

    private static final byte[] ZIP = {'P', 'K'};
    private static final byte[] OLD_OFFICE = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};
    private static final byte[] PDF = {'%', 'P', 'D', 'F'};
    private static final int MAGIC = 8;

    private SheetReader() {
    }

    /**
     * The sheets of a file in which something stands.
     *
     * @param progress hears of the rows that are read, and may stop the reading
     * @throws ImportException when the file is not a workbook or text, or is too large
     */
    public static List<Sheet> read(Path path, ReadingProgress progress) throws ImportException {
        String file = path.getFileName().toString();
        try {
            if (Files.size(path) > MOST_BYTES) {
                throw refused(file, "The file is larger than 64 MiB; remove sheets and rows that are not needed.");
            }
            byte[] magic = magic(path);
            if (startsWith(magic, OLD_OFFICE)) {
                throw refused(file, "This is an old workbook (.xls) or one with a password; save it as XLSX without a password.");
            }
            if (startsWith(magic, PDF)) {
                throw refused(file, "This is a PDF document; ask for the table as XLSX or CSV, or copy it into a spreadsheet.");
            }
            List<Sheet> sheets = startsWith(magic, ZIP) ? WorkbookReader.read(path, progress) : List.of(DelimitedText.read(path, progress));
            return withRows(file, sheets);
        } catch (IOException e) {
            throw refused(file, "The file cannot be read: " + e.getMessage());
        }
    }

    /**
     * The sheet of a text that was copied from a spreadsheet or a page.
     *
     * @param place what it is called in messages
     * @param progress hears of the rows that are read, and may stop the reading
     * @throws ImportException when nothing stands in it, or too much
     */
    public static Sheet pasted(String place, String text, ReadingProgress progress) throws ImportException {
        return withRows(place, List.of(DelimitedText.of(place, text, progress))).get(0);
    }

    private static List<Sheet> withRows(String file, List<Sheet> sheets) throws ImportException {
        List<Sheet> filled = sheets.stream().filter(s -> !s.rows().isEmpty()).toList();
        if (filled.isEmpty()) {
            throw refused(file, "Nothing stands in the file.");
        }
        return filled;
    }

    static ImportException refused(String place, String message) {
        return new ImportException(List.of(new ImportProblem(place, 0, "", message)));
    }

    private static byte[] magic(Path path) throws IOException {
        try (InputStream in = Files.newInputStream(path)) {
            return in.readNBytes(MAGIC);
        }
    }

    private static boolean startsWith(byte[] bytes, byte[] with) {
        return bytes.length >= with.length && Arrays.equals(Arrays.copyOf(bytes, with.length), with);
    }
}
