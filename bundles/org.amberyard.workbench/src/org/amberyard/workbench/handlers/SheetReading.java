package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import java.util.List;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.sheet.Sheet;
import org.amberyard.exchange.sheet.SheetReader;

/** Reads the sheets of a workbook or a text file in the background. */
public final class SheetReading extends FileReading<List<Sheet>> {

    /** Will read a file. */
    public SheetReading(Path file) {
        super(file);
    }

    @Override
    protected List<Sheet> read(Path path) throws ImportException {
        return SheetReader.read(path, progress());
    }
}
