package org.amberyard.workbench.welcome;

import java.nio.file.Path;
import java.util.List;
import org.amberyard.workbench.handlers.RecentStudies;
import org.amberyard.workbench.handlers.StudyOpener;
import org.amberyard.workbench.look.Fonts;
import org.amberyard.workbench.look.Palette;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.EditorPart;

/** The ways to a study: the example, a new one, CSV files, a file, and those opened last. */
public final class WelcomePage extends EditorPart {

    /** Its id. */
    public static final String ID = "org.amberyard.workbench.welcome";

    private static final String COMMANDS = "org.amberyard.workbench.";
    private static final int MEANING_WIDTH = 320;

    private Button first;

    @Override
    public void init(IEditorSite site, IEditorInput input) {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
    }

    @Override
    public void createPartControl(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        area.setBackground(Palette.PAPER.color());
        area.setBackgroundMode(SWT.INHERIT_FORCE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(24, 12).spacing(36, 8).applyTo(area);
        label(area, Messages.Welcome_title, Fonts.TITLE, Palette.INK, 2);
        label(area, Messages.Welcome_question, Fonts.TEXT, Palette.MUTED, 2);
        Composite ways = column(area, 2);
        first = way(ways, Messages.Welcome_example, Messages.Welcome_exampleMeaning, "example");
        way(ways, Messages.Welcome_new, Messages.Welcome_newMeaning, "new");
        way(ways, Messages.Welcome_folder, Messages.Welcome_folderMeaning, "importFolder");
        way(ways, Messages.Welcome_open, Messages.Welcome_openMeaning, "open");
        Composite recent = column(area, 1);
        label(recent, Messages.Welcome_recent, Fonts.STRONG, Palette.INK, 1);
        List<Path> files = RecentStudies.list();
        files.forEach(file -> link(recent, file));
        if (files.isEmpty()) {
            label(recent, Messages.Welcome_noRecent, Fonts.TEXT, Palette.MUTED, 1);
        }
    }

    private static Composite column(Composite parent, int columns) {
        Composite column = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(columns).spacing(12, 8).applyTo(column);
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(column);
        return column;
    }

    private static void label(Composite parent, String text, Fonts font, Palette ink, int span) {
        Label label = new Label(parent, SWT.WRAP);
        label.setText(text);
        label.setFont(font.font());
        label.setForeground(ink.color());
        GridDataFactory.fillDefaults().span(span, 1).align(SWT.FILL, SWT.CENTER).applyTo(label);
    }

    private Button way(Composite parent, String text, String meaning, String command) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(text);
        button.addListener(SWT.Selection, e -> run(COMMANDS + command));
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).applyTo(button);
        Label label = new Label(parent, SWT.WRAP);
        label.setText(meaning);
        label.setForeground(Palette.MUTED.color());
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).hint(MEANING_WIDTH, SWT.DEFAULT).applyTo(label);
        return button;
    }

    private void link(Composite parent, Path file) {
        Link link = new Link(parent, SWT.NONE);
        link.setLinkForeground(Palette.NOTICE.color());
        link.setText("<a>" + file.getFileName().toString().replace("&", "&&") + "</a>");
        link.setToolTipText(file.toString());
        link.addListener(SWT.Selection, e -> new StudyOpener(getSite().getPage()).open(file));
    }

    private void run(String command) {
        try {
            getSite().getService(IHandlerService.class).executeCommand(command, null);
        } catch (CommandException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void setFocus() {
        first.setFocus();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        // there is nothing to save
    }

    @Override
    public void doSaveAs() {
        // there is nothing to save
    }

    @Override
    public boolean isDirty() {
        return false;
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }
}
