package org.amberyard.workbench.grid;

import java.util.List;
import org.eclipse.osgi.util.NLS;

/** What every model does alike with a block of texts before it looks at a single one. */
public final class Blocks {

    private Blocks() {
    }

    /** Refuses a block that reaches past the table; nothing of it may get lost unseen. */
    public static void checkFits(GridModel model, int row, int column, List<List<String>> block) throws CellRefusal {
        int width = block.stream().mapToInt(List::size).max().orElse(0);
        if (column + width > model.columns()) {
            throw new CellRefusal(NLS.bind(Messages.Paste_tooWide, width, model.columns() - column), row, column);
        }
        if (!model.hasEntryRow() && row + block.size() > model.rows()) {
            throw new CellRefusal(NLS.bind(Messages.Paste_tooLong, block.size(), model.rows() - row), row, column);
        }
    }

    /** The message of a refused cell; in a block it says which row, and that nothing was entered. */
    public static String refusal(String message, int row, List<List<String>> block) {
        boolean single = block.size() == 1 && block.get(0).size() == 1;
        return single ? message : NLS.bind(Messages.Paste_place, row + 1, message);
    }
}
