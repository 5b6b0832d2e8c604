package org.amberyard.workbench.views;

import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.why.Derivation;
import org.amberyard.model.study.Study;
import org.amberyard.report.WhyText;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.look.PlaceTip;
import org.amberyard.workbench.look.ViewChrome;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.ViewPart;

/** How the figure in focus comes about: a tree from the result down to the inputs and their sources. */
public final class WhyView extends ViewPart {
    private static final String ID = "org.amberyard.workbench.why";
    /** What each column has of the width, and between which widths. */
    private static final double[] SHARES = {0.38, 0.22, 0.2, 0.2};
    private static final int[] NARROWEST = {180, 130, 120, 120};
    private static final int[] WIDEST = {430, 170, 420, 420};
    private static final int SHOWN_STEPS = 2;

    private final ISelectionListener listener = this::selected;
    private Tree tree;
    private WhyWork work;
    /** The last question, which waits while the view is hidden, or null. */
    private CellQuestion asked;
    private Study study;
    private boolean telling;
    private boolean hidden;

    /** Brings the view up, for the figure that is in focus. */
    static void show(IWorkbenchPage page) {
        try {
            page.showView(ID, null, IWorkbenchPage.VIEW_VISIBLE);
        } catch (PartInitException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void createPartControl(Composite parent) {
        ViewChrome.withoutToolbar(getSite());
        tree = new Tree(parent, SWT.FULL_SELECTION | SWT.SINGLE);
        tree.setHeaderVisible(true);
        tree.setBackground(Palette.PAPER.color());
        String[] headers = {Messages.Why_figure, Messages.Why_value, Messages.Why_rule, Messages.Why_source};
        for (int column = 0; column < headers.length; column++) {
            TreeColumn head = new TreeColumn(tree, column == 1 ? SWT.RIGHT : SWT.LEFT);
            head.setText(headers[column]);
            head.setWidth(NARROWEST[column]);
        }
        tree.addListener(SWT.Resize, e -> share(tree.getClientArea().width));
        tree.addListener(SWT.Expand, e -> fill((TreeItem) e.item));
        PlaceTip tip = new PlaceTip(tree);
        tree.addListener(SWT.MouseMove, e -> tellCut(tip, new Point(e.x, e.y)));
        tell(Messages.Why_none);
        work = new WhyWork(tree, () -> tell(Messages.Why_making), this::show);
        tree.addListener(SWT.Paint, e -> seen());
        getSite().getPage().addSelectionListener(listener);
        tree.addListener(SWT.Dispose, e -> getSite().getPage().removeSelectionListener(listener));
        ISelection present = getSite().getPage().getSelection();
        selected(null, present);
    }

    /** A sentence in place of figures has the whole width. */
    private void share(int width) {
        if (telling) {
            tree.getColumn(0).setWidth(width);
            return;
        }
        for (int column = 0; column < SHARES.length; column++) {
            int wanted = (int) (width * SHARES[column]);
            tree.getColumn(column).setWidth(Math.max(NARROWEST[column], Math.min(WIDEST[column], wanted)));
        }
    }

    /** A tip has the whole text of a cell that is too narrow for it. */
    private void tellCut(PlaceTip tip, Point at) {
        TreeItem item = tree.getItem(at);
        int column = item == null ? -1 : IntStream.range(0, tree.getColumnCount()).filter(c -> item.getBounds(c).contains(at)).findFirst().orElse(-1);
        tip.at(column < 0 ? null : List.of(item, column), () -> column < 0 || item.getTextBounds(column).width >= width(item.getText(column)) ? null
                : item.getText(column));
    }

    private int width(String text) {
        GC gc = new GC(tree);
        int width = gc.textExtent(text).x;
        gc.dispose();
        return width;
    }

    private void selected(IWorkbenchPart part, ISelection selection) {
        if (selection instanceof IStructuredSelection cells && cells.getFirstElement() instanceof CellQuestion question) {
            asked = question;
            answer();
        }
    }

    /** Nothing is worked out as long as the view is hidden behind another. */
    private void answer() {
        hidden = !tree.isVisible();
        if (hidden) {
            work.stop();
        } else {
            work.ask(asked);
        }
    }

    private void seen() {
        if (hidden) {
            answer();
        }
    }

    private void show(CellQuestion question, Derivation why) {
        study = question.study();
        tree.removeAll();
        telling = false;
        share(tree.getClientArea().width);
        show(new TreeItem(tree, SWT.NONE), why, SHOWN_STEPS);
    }

    private void tell(String words) {
        tree.removeAll();
        telling = true;
        share(tree.getClientArea().width);
        new TreeItem(tree, SWT.NONE).setText(words);
    }

    /** A figure; what it follows from is put in when it is opened, because a present cost hangs on thousands of figures. */
    private void show(TreeItem item, Derivation figure, int steps) {
        WhyText.Line line = WhyText.line(study, figure);
        item.setText(new String[] {Words.say(line.name()), Words.figure(line.value()), Words.say(line.rule()), Words.say(line.source())});
        item.setData(figure);
        List<Derivation> parts = WhyText.parts(study, figure);
        if (!parts.isEmpty() && steps > 0 && figure.input().isEmpty()) {
            parts.forEach(p -> show(new TreeItem(item, SWT.NONE), p, steps - 1));
            item.setExpanded(true);
        } else if (!parts.isEmpty()) {
            new TreeItem(item, SWT.NONE);
        }
    }

    private void fill(TreeItem item) {
        boolean empty = item.getItemCount() == 1 && item.getItem(0).getData() == null;
        if (empty && item.getData() instanceof Derivation figure) {
            item.removeAll();
            WhyText.parts(study, figure).forEach(p -> show(new TreeItem(item, SWT.NONE), p, 0));
        }
    }

    @Override
    public void setFocus() {
        tree.setFocus();
    }
}
