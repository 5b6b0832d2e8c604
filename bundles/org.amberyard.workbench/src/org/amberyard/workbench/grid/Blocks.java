package org.amberyard.workbench.grid;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.eclipse.osgi.util.NLS;

/** What every model does alike with a block of texts before it looks at a single one. */
public final class Blocks {

    private Blocks() {
    }

    /** Refuses a block that reaches past the table; nothing of it may get lost unseen. */
    public static void checkFits(GridModel model, int row, int column, List<List<String>> block) throws CellRefusal {
        int width = block.stream().mapToInt(List::size).max().orElse(0);
        if (column + width > model.columns()) {
            throw new CellRefusal(NLS.bind(Messages.Paste_tooWide, width, model.columns() - column), "", row, column);
        }
        if (!model.hasEntryRow() && row + block.size() > model.rows()) {
            throw new CellRefusal(NLS.bind(Messages.Paste_tooLong, block.size(), model.rows() - row), "", row, column);
        }
    }

    /**
     * What is to be told of the texts of a block that were refused.
     *
     * @throws CellRefusal the only one, where the block is a single text
     */
    public static List<CellRefusal> told(List<CellRefusal> refused, List<List<String>> block) throws CellRefusal {
        boolean single = block.size() == 1 && block.get(0).size() == 1;
        if (single && !refused.isEmpty()) {
            throw refused.get(0);
        }
        return List.copyOf(refused);
    }

    /** True for a line of a block without any text: it adds no row. */
    public static boolean isBlank(List<String> line) {
        return line.stream().allMatch(text -> text == null || text.isBlank());
    }

    /**
     * Number of the texts that a block has for cells; lines without any text are none for rows that are yet to come.
     *
     * @param rows number of lines that are for rows of the table
     */
    static int texts(List<List<String>> block, int rows) {
        return IntStream.range(0, block.size()).filter(i -> i < rows || !isBlank(block.get(i)))
                .map(i -> (int) block.get(i).stream().filter(Objects::nonNull).count()).sum();
    }
}
