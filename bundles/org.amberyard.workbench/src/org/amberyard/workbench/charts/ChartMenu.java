package org.amberyard.workbench.charts;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Supplier;
import org.amberyard.charts.Chart;
import org.amberyard.charts.ChartExport;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.BusyIndicator;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.HTMLTransfer;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.handlers.IHandlerService;

/** Takes a chart out of the window, as picture or as data: to the clipboard, into a file, onto paper; and what else it can do. */
final class ChartMenu {

    private static final String TASK_SHEET = "org.amberyard.workbench.taskSheet";
    private static final int PAGE_WIDTH = 900;
    private static final double PRINT_SCALE = 2;

    /** Writes a chart into a file. */
    @FunctionalInterface
    private interface Writer {
        void write(Chart chart, Path file) throws IOException;
    }

    private final ChartCanvas canvas;
    private final Menu menu;

    /**
     * The menu of a canvas.
     *
     * @param notes what was noted on its charts
     * @param onPaper gives the chart on show as it is to be saved
     */
    ChartMenu(ChartCanvas canvas, ChartNotes notes, Supplier<Chart> onPaper) {
        this.canvas = canvas;
        menu = new Menu(canvas);
        item(Messages.Menu_copyPicture, this::copyPicture);
        item(Messages.Menu_copyData, this::copyData);
        new MenuItem(menu, SWT.SEPARATOR);
        item(Messages.Menu_savePng, () -> save("png", onPaper, ChartMenu::writePng));
        item(Messages.Menu_saveSvg, () -> save("svg", onPaper, ChartMenu::writeSvg));
        item(Messages.Menu_savePdf, () -> save("pdf", onPaper, ChartMenu::writePdf));
        item(Messages.Menu_saveCsv, () -> save("csv", () -> canvas.chart().orElseThrow(), ChartMenu::writeCsv));
        item(Messages.Menu_print, () -> new ChartPrinting(canvas.getShell()).print(made(onPaper), PAGE_WIDTH));
        new MenuItem(menu, SWT.SEPARATOR);
        item(Messages.Menu_zoomIn, canvas.zooming()::in);
        item(Messages.Menu_zoomOut, canvas.zooming()::out);
        item(Messages.Menu_whole, canvas.zooming()::whole);
        menu.addListener(SWT.Show, e -> enable());
        canvas.legend().addTo(menu);
        notes.addTo(menu);
        canvas.setMenu(menu);
    }

    /** Adds a way to something else. */
    void add(String text, Runnable action) {
        new MenuItem(menu, SWT.SEPARATOR);
        item(text, action);
    }

    /** The way from the shop's charts to the task sheet of a bus. */
    void addTaskSheet(IHandlerService handlers) {
        add(Messages.Menu_taskSheet, () -> {
            try {
                handlers.executeCommand(TASK_SHEET, null);
            } catch (CommandException e) {
                MessageDialog.openError(canvas.getShell(), Messages.Menu_taskSheet, e.getMessage());
            }
        });
    }

    private void item(String text, Runnable action) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(text);
        item.addListener(SWT.Selection, e -> action.run());
    }

    private void enable() {
        for (MenuItem item : menu.getItems()) {
            item.setEnabled(canvas.chart().isPresent());
        }
    }

    private void copyPicture() {
        canvas.picture().ifPresent(p -> copy(new Object[] {p.pixels()}, ImageTransfer.getInstance()));
    }

    private void copyData() {
        canvas.chart().map(Chart::data).ifPresent(data -> copy(new Object[] {data.toTsv(), ChartMarkup.of(data)}, TextTransfer.getInstance(),
                HTMLTransfer.getInstance()));
    }

    private void copy(Object[] contents, Transfer... transfers) {
        Clipboard clipboard = new Clipboard(canvas.getDisplay());
        clipboard.setContents(contents, transfers);
        clipboard.dispose();
    }

    private void save(String extension, Supplier<Chart> saved, Writer writer) {
        FileDialog dialog = new FileDialog(canvas.getShell(), SWT.SAVE);
        dialog.setFileName(canvas.chart().orElseThrow().name() + "." + extension);
        dialog.setFilterExtensions(new String[] {"*." + extension});
        dialog.setOverwrite(true);
        ActiveSession.here().get().flatMap(StudySession::folder).ifPresent(dialog::setFilterPath);
        String name = dialog.open();
        if (name == null) {
            return;
        }
        Chart chart = made(saved);
        try {
            // The canvas may be painting the same chart; charts keep state while they are drawn.
            synchronized (chart.chart()) {
                writer.write(chart, Path.of(name));
            }
        } catch (IOException e) {
            MessageDialog.openError(canvas.getShell(), Messages.Save_failed, e.getMessage());
        }
    }

    private Chart made(Supplier<Chart> chart) {
        Chart[] made = new Chart[1];
        BusyIndicator.showWhile(canvas.getDisplay(), () -> made[0] = canvas.picture().orElseThrow().lookedAt(chart.get()));
        return made[0];
    }

    private static void writePng(Chart chart, Path file) throws IOException {
        ChartExport.png(chart, file, PAGE_WIDTH, chart.preferredHeight(), PRINT_SCALE);
    }

    private static void writeSvg(Chart chart, Path file) throws IOException {
        ChartExport.svg(chart, file, PAGE_WIDTH, chart.preferredHeight());
    }

    private static void writePdf(Chart chart, Path file) throws IOException {
        ChartExport.pdf(chart, file, PAGE_WIDTH, chart.preferredHeight());
    }

    private static void writeCsv(Chart chart, Path file) throws IOException {
        Files.writeString(file, chart.data().toCsv(), StandardCharsets.UTF_8);
    }
}
