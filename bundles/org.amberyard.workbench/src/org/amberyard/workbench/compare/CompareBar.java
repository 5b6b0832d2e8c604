package org.amberyard.workbench.compare;

import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.amberyard.model.io.StudyFile;
import org.amberyard.workbench.look.DropList;
import org.amberyard.workbench.look.Palette;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** What is compared and how much of it is shown. */
final class CompareBar {

    /** What can be compared. */
    enum What {
        FIGURES(Messages.Compare_figures), PLANS(Messages.Compare_plans), STUDIES(Messages.Compare_studies);

        private final String label;

        What(String label) {
            this.label = label;
        }
    }

    private static final int COLUMNS = 4;
    private static final int LEAST_LIST_WIDTH = 140;
    private static final int LEAST_SEARCH_WIDTH = 100;

    private final Runnable changed;
    private final Combo what;
    private final Button different;
    private final Text search;
    private final Label state;
    private final Text stamp;

    /**
     * A bar.
     *
     * @param changed is run when something else is to be shown
     * @param other takes the file of another study
     */
    CompareBar(Composite parent, Runnable changed, Consumer<Path> other) {
        this.changed = changed;
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(COLUMNS).spacing(8, 2).applyTo(area);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(area);
        what = DropList.on(area);
        what.setItems(Stream.of(What.values()).map(w -> w.label).toArray(String[]::new));
        what.select(0);
        what.setToolTipText(Messages.Compare_what_tip);
        what.addListener(SWT.Selection, e -> changed.run());
        GridDataFactory.fillDefaults().hint(LEAST_LIST_WIDTH, SWT.DEFAULT).grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(what);
        different = new Button(area, SWT.CHECK);
        different.setText(Messages.Compare_different);
        different.setToolTipText(Messages.Compare_different_tip);
        different.setSelection(true);
        different.addListener(SWT.Selection, e -> changed.run());
        search = new Text(area, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        search.setMessage(Messages.Compare_rows);
        search.setToolTipText(Messages.Compare_rows_tip);
        search.addListener(SWT.Modify, e -> changed.run());
        GridDataFactory.fillDefaults().hint(LEAST_SEARCH_WIDTH, SWT.DEFAULT).grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(search);
        Button open = new Button(area, SWT.PUSH);
        open.setText(Messages.Compare_another);
        open.setToolTipText(Messages.Compare_another_tip);
        open.addListener(SWT.Selection, e -> ask(area, other));
        state = new Label(area, SWT.NONE);
        state.setForeground(Palette.MUTED.color());
        GridDataFactory.fillDefaults().span(COLUMNS, 1).applyTo(state);
        stamp = new Text(area, SWT.READ_ONLY | SWT.WRAP);
        stamp.setForeground(Palette.MUTED.color());
        GridDataFactory.fillDefaults().span(COLUMNS, 1).grab(true, false).hint(LEAST_SEARCH_WIDTH, SWT.DEFAULT).applyTo(stamp);
    }

    private static void ask(Composite area, Consumer<Path> other) {
        FileDialog dialog = new FileDialog(area.getShell(), SWT.OPEN);
        dialog.setText(Messages.Compare_another_title);
        dialog.setFilterExtensions(new String[] {"*." + StudyFile.EXTENSION});
        String name = dialog.open();
        if (name != null) {
            other.accept(Path.of(name));
        }
    }

    What what() {
        return What.values()[Math.max(0, what.getSelectionIndex())];
    }

    /** Compares something else. */
    void choose(What chosen) {
        if (what() != chosen) {
            what.select(chosen.ordinal());
            changed.run();
        }
    }

    boolean isOnlyDifferent() {
        return different.getSelection();
    }

    String search() {
        return search.getText();
    }

    /** Lets the user type which rows are to be seen. */
    void goToSearch() {
        search.setFocus();
    }

    /** Names the other study. */
    void other(String name) {
        int place = What.STUDIES.ordinal();
        String label = name.isEmpty() ? What.STUDIES.label : NLS.bind(Messages.Compare_studies_of, name);
        if (!label.equals(what.getItem(place))) {
            int chosen = what.getSelectionIndex();
            what.setItem(place, label);
            what.select(chosen);
        }
    }

    /** Says on which assumptions that which is compared stands. */
    void stamp(String words) {
        if (!words.equals(stamp.getText())) {
            stamp.setText(words);
            stamp.requestLayout();
        }
    }

    void say(String words) {
        state.setText(words.replace("&", "&&"));
        state.setToolTipText(words);
    }
}
