package org.amberyard.workbench.charts;

import java.awt.image.BufferedImage;
import org.amberyard.charts.Chart;
import org.amberyard.charts.ChartExport;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTError;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.printing.PrintDialog;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Shell;

/** Prints a chart, as large as a page takes it. */
final class ChartPrinting {
    /** Pixels of a chart unit on paper: 900 units over ten inches are 270 to the inch. */
    private static final double SCALE = 3;
    private static final double MARGIN_INCHES = 0.5;

    private final Shell shell;

    ChartPrinting(Shell shell) {
        this.shell = shell;
    }

    /** Asks for a printer and prints; says so where there is none. */
    void print(Chart chart, int width) {
        if (Printer.getPrinterList().length == 0) {
            MessageDialog.openInformation(shell, Messages.Print_title, Messages.Print_none);
            return;
        }
        PrintDialog dialog = new PrintDialog(shell);
        PrinterData ask = new PrinterData();
        ask.orientation = PrinterData.LANDSCAPE;
        dialog.setPrinterData(ask);
        PrinterData chosen = dialog.open();
        if (chosen != null) {
            paint(chart, width, chosen);
        }
    }

    private void paint(Chart chart, int width, PrinterData chosen) {
        Job job = Job.create(Messages.Print_title, (ICoreRunnable) monitor -> {
            BufferedImage image;
            // The canvas may be painting the same chart; charts keep state while they are drawn.
            synchronized (chart.chart()) {
                image = ChartExport.image(chart, width, chart.preferredHeight(), SCALE);
            }
            shell.getDisplay().asyncExec(() -> send(chart.title(), image, chosen));
        });
        job.setUser(true);
        job.schedule();
    }

    private void send(String title, BufferedImage image, PrinterData chosen) {
        try {
            Printer printer = new Printer(chosen);
            try {
                send(title, image, printer);
            } finally {
                printer.dispose();
            }
        } catch (SWTError e) {
            ILog.of(ChartPrinting.class).warn(e.getMessage(), e);
            MessageDialog.openError(shell, Messages.Print_title, e.getMessage());
        }
    }

    private static void send(String title, BufferedImage image, Printer printer) {
        if (!printer.startJob(title)) {
            throw new SWTError(SWT.ERROR_UNSPECIFIED, Messages.Print_refused);
        }
        Rectangle page = room(printer.getClientArea(), printer.getDPI());
        Rectangle place = placed(image.getWidth(), image.getHeight(), page);
        printer.startPage();
        Image picture = new Image(printer, ChartPicture.pixels(image));
        GC gc = new GC(printer);
        gc.drawImage(picture, 0, 0, image.getWidth(), image.getHeight(), place.x, place.y, place.width, place.height);
        gc.dispose();
        picture.dispose();
        printer.endPage();
        printer.endJob();
    }

    private static Rectangle room(Rectangle page, Point dpi) {
        int across = (int) (MARGIN_INCHES * dpi.x);
        int down = (int) (MARGIN_INCHES * dpi.y);
        return new Rectangle(page.x + across, page.y + down, page.width - 2 * across, page.height - 2 * down);
    }

    /** The largest place on a page in which a picture keeps its proportions, at the top and in the middle. */
    static Rectangle placed(int width, int height, Rectangle page) {
        double scale = Math.min(page.width / (double) width, page.height / (double) height);
        int wide = (int) Math.round(scale * width);
        return new Rectangle(page.x + (page.width - wide) / 2, page.y, wide, (int) Math.round(scale * height));
    }
}
