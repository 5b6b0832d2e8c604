package org.amberyard.workbench.session;

import java.util.Optional;
import org.amberyard.charts.Figures;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Shell;

/** Asks before a what-if that takes long, and offers fewer draws. */
public final class RunQuestion {
    private static final double MINUTE_S = 60;
    private static final int RUN = 0;
    private static final int FEWER = 1;

    private RunQuestion() {
    }

    /** Runs what takes a short time, or of which nobody knows; else the user decides. */
    public static void ask(Button button, WhatIfWork work, Optional<RunEstimate> estimate) {
        if (button.isDisposed()) {
            return;
        }
        RunEstimate time = estimate.filter(RunEstimate::isLong).orElse(null);
        if (time == null) {
            work.run();
            return;
        }
        boolean less = time.fewerSeconds() < time.seconds();
        String[] answers = less ? new String[] {Messages.Run_anyway, NLS.bind(Messages.Run_fewer, Figures.whole(time.fewerDraws()), words(time.fewerSeconds())),
            Messages.Run_not} : new String[] {Messages.Run_anyway, Messages.Run_not};
        int answer = MessageDialog.open(MessageDialog.QUESTION, button.getShell(), Messages.Run_title, said(time), 0, answers);
        if (answer == RUN) {
            work.run();
        } else if (less && answer == FEWER) {
            work.runWith(time.fewerDraws());
        }
    }

    /** Tells how long a run takes. */
    public static void tell(Shell shell, Optional<RunEstimate> estimate) {
        if (!shell.isDisposed()) {
            MessageDialog.openInformation(shell, Messages.Run_title, estimate.map(RunQuestion::said).orElse(Messages.Run_unknown));
        }
    }

    private static String said(RunEstimate time) {
        return time.evaluations() == 0 ? Messages.Run_moments
                : NLS.bind(Messages.Run_takes, new Object[] {words(time.seconds()), Figures.whole(time.evaluations())});
    }

    private static String words(double seconds) {
        return seconds < 2 * MINUTE_S ? NLS.bind(Messages.Run_seconds, Figures.whole(Math.ceil(seconds)))
                : NLS.bind(Messages.Run_minutes, Figures.whole(Math.ceil(seconds / MINUTE_S)));
    }
}
