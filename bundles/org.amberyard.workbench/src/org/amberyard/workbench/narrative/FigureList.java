package org.amberyard.workbench.narrative;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.report.papers.NarrativeFigures;
import org.amberyard.report.papers.PrintedFigure;
import org.amberyard.study.FigureName;
import org.amberyard.workbench.grid.ListModel;
import org.amberyard.workbench.grid.RowWords;
import org.amberyard.workbench.language.Words;
import org.eclipse.osgi.util.NLS;

/** The figures that a narrative can name, each with what it is now and the table that it is from; where none is found, a row that says so. */
final class FigureList extends ListModel<FigureName> {
    private static final List<String> HEADERS = List.of(Messages.Figures_now, Messages.Figures_figure);

    private final Optional<NarrativeFigures> figures;

    /**
     * The figures in which words stand.
     *
     * @param figures what they are now; empty as long as there are no results
     */
    FigureList(String search, Optional<NarrativeFigures> figures) {
        super(HEADERS, found(search));
        this.figures = figures;
    }

    private static List<FigureName> found(String search) {
        RowWords words = new RowWords(search);
        return Arrays.stream(FigureName.values()).filter(n -> words.in(() -> Stream.of(n.words(), Words.say(n.words())))).toList();
    }

    /** The name in a row. */
    Optional<FigureName> name(int row) {
        return row >= 0 && row < lines().size() ? Optional.of(line(row)) : Optional.empty();
    }

    @Override
    public int rows() {
        return Math.max(1, lines().size());
    }

    @Override
    public String text(int row, int column) {
        if (lines().isEmpty()) {
            return column == 1 ? Messages.Figures_none : "";
        }
        FigureName name = line(row);
        Optional<PrintedFigure> figure = figures.flatMap(f -> f.of(name));
        return switch (column) {
            case 0 -> figure.map(PrintedFigure::words).orElse("–");
            default -> Words.say(name.words());
        };
    }

    @Override
    public String tip(int row, int column) {
        return name(row).map(name -> "{" + name.words() + "}" + table(name).map(t -> "\n" + NLS.bind(Messages.Figures_table, t)).orElse("") + "\n"
                + Messages.Figures_tip).orElse("");
    }

    private Optional<String> table(FigureName name) {
        return figures.flatMap(f -> f.of(name)).map(PrintedFigure::table).filter(t -> !t.isEmpty());
    }

    @Override
    public Object subject(int row, int column) {
        return name(row);
    }

    @Override
    public boolean isFigure(int row, int column) {
        return column == 0;
    }

    @Override
    public int headerLines() {
        return 1;
    }
}
