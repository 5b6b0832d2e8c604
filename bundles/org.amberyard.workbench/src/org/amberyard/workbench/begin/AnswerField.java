package org.amberyard.workbench.begin;

import java.util.Optional;
import org.amberyard.study.begin.AnswerSheet;
import org.amberyard.study.begin.Asked;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** A number of a question: a word, the field, its unit. */
final class AnswerField {
    private static final int WIDTH = 72;

    private final Asked asked;
    private final AnswerSheet sheet;
    private final String currency;
    private final String label;
    private final Text text;
    private final Label unit;

    AnswerField(Composite line, Question question, Question.Part part, AnswerSheet sheet, String currency, Runnable changed) {
        this.asked = part.asked();
        this.sheet = sheet;
        this.currency = currency;
        this.label = part.before().isEmpty() ? question.label() : question.label() + ", " + part.before();
        if (!part.before().isEmpty()) {
            Label word = new Label(line, SWT.NONE);
            word.setText(part.before());
            word.setToolTipText(part.tip().isEmpty() ? null : part.tip());
        }
        text = new Text(line, SWT.BORDER | SWT.RIGHT);
        GridDataFactory.swtDefaults().hint(WIDTH, SWT.DEFAULT).applyTo(text);
        text.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = label;
            }
        });
        text.setToolTipText(part.tip().isEmpty() ? null : part.tip());
        unit = new Label(line, SWT.NONE);
        show();
        text.addListener(SWT.Modify, e -> changed.run());
    }

    void show() {
        text.setText(sheet.text(asked));
        unit.setText(sheet.symbol(asked, currency));
        unit.requestLayout();
    }

    /** Reads what was typed; what is said of it when it is not allowed. What makes no difference is not asked for. */
    Optional<String> read() {
        text.setEnabled(sheet.matters(asked));
        return !sheet.matters(asked) || sheet.read(asked, text.getText()) ? Optional.empty()
                : Optional.of(NLS.bind(Messages.Begin_refused, new Object[] {label, text.getText(), sheet.lowestText(asked),
                    (sheet.highestText(asked) + " " + sheet.symbol(asked, currency)).strip()}));
    }
}
