package org.amberyard.workbench.charts;

import java.util.function.Supplier;
import org.amberyard.charts.Chart;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;

/**
 * Makes and paints the chart of a canvas in the background; of several requests only the last is painted, and none as long as
 * the canvas is hidden behind another view.
 */
final class ChartPainting extends Job {

    private record Request(Supplier<Chart> source, int width, int height, int zoom) {
    }

    private final ChartCanvas canvas;
    private Supplier<Chart> source;
    private boolean hidden;
    private volatile Request wanted;
    private Supplier<Chart> madeFrom;
    private Chart made;

    ChartPainting(ChartCanvas canvas) {
        super(Messages.Chart_painting);
        this.canvas = canvas;
        setSystem(true);
    }

    void show(Supplier<Chart> newSource) {
        source = newSource;
        request();
    }

    void resize() {
        if (source != null) {
            request();
        }
    }

    void forget() {
        source = null;
        wanted = null;
        cancel();
    }

    /** The canvas is being looked at. */
    void seen() {
        if (hidden && source != null) {
            request();
        }
    }

    private void request() {
        hidden = !canvas.isVisible();
        if (hidden) {
            // What is on it now would be out of date when it comes back to the front.
            wanted = null;
            canvas.drop();
            return;
        }
        Rectangle area = canvas.getClientArea();
        if (area.width > 0 && area.height > 0) {
            wanted = new Request(source, area.width, area.height, canvas.getMonitor().getZoom());
            schedule();
        }
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        Request request = wanted;
        if (request == null) {
            return Status.CANCEL_STATUS;
        }
        try {
            if (madeFrom != request.source()) {
                made = request.source().get();
                madeFrom = request.source();
            }
            ChartPicture picture = ChartPicture.paint(made, request.width(), request.height(), request.zoom());
            if (request == wanted && !canvas.isDisposed()) {
                Image image = picture.image(canvas.getDisplay());
                canvas.getDisplay().asyncExec(() -> publish(request, picture, image));
            }
        } catch (RuntimeException e) {
            // One chart that cannot be painted must not take the window down.
            ILog.of(ChartPainting.class).error(e.getMessage(), e);
            tellFailure(request, e);
        }
        return Status.OK_STATUS;
    }

    private void tellFailure(Request request, RuntimeException e) {
        if (!canvas.isDisposed()) {
            canvas.getDisplay().asyncExec(() -> {
                if (request == wanted && !canvas.isDisposed()) {
                    canvas.fail(NLS.bind(Messages.Chart_failed, e.getMessage()));
                }
            });
        }
    }

    private void publish(Request request, ChartPicture picture, Image image) {
        if (request == wanted && !canvas.isDisposed()) {
            canvas.publish(picture, image);
        } else {
            image.dispose();
        }
    }
}
