package org.amberyard.workbench.handlers;

import java.util.List;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.sheet.Sheet;
import org.amberyard.exchange.sheet.SheetReader;

/** Reads the sheet that was copied as text, in the background. */
final class PastedReading extends Reading<List<Sheet>> {
    /** Name of the sheet in messages and sources, which are English. */
    private static final String PLACE = "clipboard";

    private final String text;

    PastedReading(String text) {
        super(PLACE);
        this.text = text;
    }

    @Override
    List<Sheet> read() throws ImportException {
        return List.of(SheetReader.pasted(PLACE, text, progress()));
    }
}
