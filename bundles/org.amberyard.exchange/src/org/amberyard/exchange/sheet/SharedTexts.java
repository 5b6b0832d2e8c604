package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.List;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** Takes the texts that the cells of a workbook share out of their part as it is parsed; sounds of Asian words are left out. */
final class SharedTexts extends DefaultHandler {
    private final ReadingBudget budget;
    private final List<String> texts = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private boolean reading;
    private boolean sound;

    SharedTexts(ReadingBudget budget) {
        this.budget = budget;
    }

    @Override
    public void startElement(String uri, String local, String qualified, Attributes attributes) {
        switch (local) {
            case "si" -> text.setLength(0);
            case "rPh" -> sound = true;
            case "t" -> reading = !sound;
            default -> {
                // fonts of parts of a text say nothing
            }
        }
    }

    /** @throws TooMuch when a text or the file is too long */
    @Override
    public void characters(char[] characters, int start, int length) {
        if (reading) {
            text.append(characters, start, length);
            budget.cell(() -> "A text of the workbook", text.length());
        }
    }

    @Override
    public void endElement(String uri, String local, String qualified) {
        switch (local) {
            case "si" -> add();
            case "rPh" -> sound = false;
            case "t" -> reading = false;
            default -> {
                // as at its start
            }
        }
    }

    private void add() {
        budget.cells(1);
        budget.text(() -> "A text of the workbook", text.length());
        texts.add(text.toString());
    }

    /**
     * The text of a number.
     *
     * @throws IndexOutOfBoundsException when the workbook has none
     */
    String get(int number) {
        return texts.get(number);
    }
}
