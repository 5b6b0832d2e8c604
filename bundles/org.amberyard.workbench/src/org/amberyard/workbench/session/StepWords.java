package org.amberyard.workbench.session;

import java.util.List;
import java.util.stream.Collectors;
import org.amberyard.workbench.language.Counted;
import org.eclipse.osgi.util.NLS;

/** Says what an edit has changed: in a line for menus and headline, or change by change. */
public final class StepWords {

    private StepWords() {
    }

    /** The edit in a line: a single change with its values, of several changes their number. */
    public static String brief(HistoryStep step) {
        if (step.count() == 1 && step.changes().size() == 1) {
            return brief(step.changes().get(0));
        }
        return step.count() == 0 ? step.label() : NLS.bind(Counted.of(step.count(), Messages.Step_manyOne, Messages.Step_many), step.label(), step.count());
    }

    /** A change in a line, with its values. */
    public static String brief(Change change) {
        return change.field().isEmpty() ? member(change)
                : NLS.bind(Messages.Step_brief, new Object[] {change.element(), change.field(), value(change.before()), value(change.after())});
    }

    /** Several edits: one as itself, of more their number. */
    public static String brief(List<HistoryStep> steps) {
        return steps.size() == 1 ? brief(steps.get(0)) : NLS.bind(Messages.Step_several, steps.size());
    }

    /** All that an edit has changed, line by line, its name first. */
    public static String details(HistoryStep step) {
        String words = step.label() + step.changes().stream().map(c -> "\n" + line(c)).collect(Collectors.joining());
        int more = step.count() - step.changes().size();
        return more > 0 ? words + "\n" + NLS.bind(Messages.Step_more, more) : words;
    }

    private static String line(Change change) {
        return change.field().isEmpty() ? member(change)
                : NLS.bind(Messages.Step_change, new Object[] {change.element(), change.field(), value(change.before()), value(change.after())});
    }

    private static String member(Change change) {
        return NLS.bind(change.before().isEmpty() ? Messages.Step_come : Messages.Step_gone, change.element());
    }

    private static String value(String text) {
        return text.isEmpty() ? Messages.Step_nothing : text;
    }
}
