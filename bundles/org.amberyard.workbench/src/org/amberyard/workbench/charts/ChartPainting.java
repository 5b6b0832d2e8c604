package org.amberyard.workbench.charts;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import org.amberyard.charts.Chart;
import org.amberyard.charts.ChartLens;
import org.amberyard.charts.ChartLook;
import org.amberyard.charts.ChartRemark;
import org.amberyard.charts.ChartZoom;
import org.amberyard.core.progress.Progress;
import org.amberyard.workbench.work.JobProgress;
import org.amberyard.workbench.work.Owner;
import org.amberyard.workbench.work.WorkStrip;
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

    private record Request(Function<Progress, Chart> source, Optional<ChartZoom> part, List<ChartNotes.Noted> notes,
            int width, int height, int zoom) {

        /** What was noted on a chart. */
        List<ChartRemark> on(String chart) {
            return notes.stream().filter(n -> n.chart().equals(chart)).map(ChartNotes.Noted::remark).toList();
        }
    }

    private final ChartCanvas canvas;
    private final Owner owner;
    private Function<Progress, Chart> source;
    private WorkStrip strip;
    private boolean stopped;
    private boolean hidden;
    private volatile Request wanted;
    private Function<Progress, Chart> published;
    private Function<Progress, Chart> madeFrom;
    private Chart made;
    private ChartLens lens;

    ChartPainting(ChartCanvas canvas) {
        super(Messages.Chart_painting);
        this.canvas = canvas;
        this.owner = new Owner(canvas);
        setSystem(true);
    }

    /** Tells on a strip of work that takes long. */
    void tellOn(WorkStrip newStrip) {
        strip = newStrip;
    }

    void show(Function<Progress, Chart> newSource) {
        source = newSource;
        stopped = false;
        request();
    }

    /** The size of the canvas has changed, or how the chart is looked at. */
    void repaint() {
        if (source != null && !stopped) {
            request();
        }
    }

    /** True as long as the picture of the chart asked for is not on the canvas. */
    boolean isUnderWay() {
        return source != null && source != published;
    }

    /** The user does not want to wait for the chart. */
    void stop() {
        stopped = true;
        wanted = null;
        strip.stopped();
    }

    /** The user wants the chart that was stopped. */
    void again() {
        if (source != null) {
            show(source);
        }
    }

    void forget() {
        source = null;
        wanted = null;
        cancel();
        endOfWork();
    }

    /** The canvas is being looked at. */
    void seen() {
        if (hidden && source != null && !stopped) {
            request();
        }
    }

    private void endOfWork() {
        if (strip != null) {
            strip.done();
        }
    }

    private void request() {
        hidden = !canvas.isVisible();
        if (hidden) {
            // What is on it now would be out of date when it comes back to the front.
            wanted = null;
            canvas.drop();
            endOfWork();
            return;
        }
        Rectangle area = canvas.getClientArea();
        if (area.width > 0 && area.height > 0) {
            wanted = new Request(source, canvas.zoom(), canvas.notes(), area.width, area.height, canvas.getMonitor().getZoom());
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
                made = request.source().apply(new JobProgress(owner, () -> isFor(request.source()), this::tell));
                lens = new ChartLens(made);
                madeFrom = request.source();
            }
            ChartLook look = new ChartLook(HiddenSeries.of(made.name()), request.part(), request.on(made.name()));
            ChartPicture picture = ChartPicture.paint(made, lens, look, request.width(), request.height(), request.zoom());
            if (request == wanted && !owner.isGone()) {
                Image image = picture.image(owner.display());
                owner.display().asyncExec(() -> publish(request, picture, image));
            }
        } catch (CancellationException e) {
            return Status.CANCEL_STATUS;
        } catch (RuntimeException e) {
            // One chart that cannot be painted must not take the window down.
            ILog.of(ChartPainting.class).error(e.getMessage(), e);
            tellFailure(request, e);
        }
        return Status.OK_STATUS;
    }

    private boolean isFor(Function<Progress, Chart> asked) {
        Request now = wanted;
        return now != null && now.source() == asked;
    }

    private void tell(double share) {
        canvas.outpaced();
        if (strip != null) {
            strip.at(share);
        }
    }

    private void tellFailure(Request request, RuntimeException e) {
        owner.tell(() -> request == wanted, () -> {
            endOfWork();
            canvas.fail(NLS.bind(Messages.Chart_failed, e.getMessage()));
        });
    }

    private void publish(Request request, ChartPicture picture, Image image) {
        if (request == wanted && !canvas.isDisposed()) {
            endOfWork();
            published = request.source();
            canvas.publish(picture, image);
        } else {
            image.dispose();
        }
    }
}
