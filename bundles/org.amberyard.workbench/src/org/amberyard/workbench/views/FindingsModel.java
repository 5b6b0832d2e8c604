package org.amberyard.workbench.views;

import java.util.List;
import java.util.Optional;
import org.amberyard.model.validation.Finding;
import org.amberyard.workbench.grid.CellMark;
import org.amberyard.workbench.grid.ListModel;
import org.amberyard.workbench.language.Words;

/** Findings as a table. */
final class FindingsModel extends ListModel<Finding> {

    private static final List<String> HEADERS =
            List.of(Messages.Findings_kind, Messages.Findings_where, Messages.Findings_what);

    FindingsModel(List<Finding> findings) {
        super(HEADERS, findings);
    }

    @Override
    public String text(int row, int column) {
        Finding finding = line(row);
        return switch (column) {
            case 0 -> kind(finding);
            case 1 -> sentence(Words.withKind(finding.element()));
            default -> Words.say(finding.message());
        };
    }

    private static String sentence(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private static String kind(Finding finding) {
        return switch (finding.severity()) {
            case ERROR -> Messages.Finding_error;
            case WARNING -> Messages.Finding_warning;
            case INFO -> Messages.Finding_notice;
        };
    }

    @Override
    public String tip(int row, int column) {
        return Words.say(line(row).message());
    }

    @Override
    public Optional<CellMark> mark(int row, int column) {
        if (column > 0) {
            return Optional.empty();
        }
        Finding finding = line(row);
        return Optional.of(new CellMark(switch (finding.severity()) {
            case ERROR -> CellMark.Level.ERROR;
            case WARNING -> CellMark.Level.WARNING;
            case INFO -> CellMark.Level.NOTICE;
        }, Words.say(finding.message())));
    }
}
