package org.amberyard.workbench.views;

import java.util.Optional;
import org.amberyard.workbench.editor.StudyEditor;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.look.ViewChrome;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.DoubleClickEvent;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** What the study consists of; choosing a line shows it in the editor. */
public final class OutlineView extends ViewPart {

    private TreeViewer viewer;
    private StudySession shown;
    private int revision;
    private boolean reading;

    @Override
    public void createPartControl(Composite parent) {
        ViewChrome.withoutToolbar(getSite());
        viewer = new TreeViewer(parent, SWT.SINGLE | SWT.V_SCROLL | SWT.H_SCROLL);
        viewer.getTree().setBackground(Palette.PAPER.color());
        viewer.setUseHashlookup(true);
        viewer.setContentProvider(new Content());
        viewer.setLabelProvider(ColumnLabelProvider.createTextProvider(n -> ((OutlineNode) n).label()));
        viewer.addSelectionChangedListener(this::selected);
        viewer.addDoubleClickListener(this::opened);
        ActiveSession.here().follow(viewer.getTree(), this::update);
    }

    private void update(Optional<StudySession> session) {
        StudySession next = session.orElse(null);
        int nextRevision = session.map(StudySession::revision).orElse(0);
        if (next == shown && nextRevision == revision) {
            return;
        }
        reading = true;
        if (next != shown) {
            viewer.setInput(next);
        } else {
            viewer.refresh();
        }
        reading = false;
        shown = next;
        revision = nextRevision;
    }

    private void selected(SelectionChangedEvent event) {
        if (!reading && viewer.getControl().isFocusControl()) {
            show(event.getStructuredSelection());
        }
    }

    private void opened(DoubleClickEvent event) {
        show((IStructuredSelection) event.getSelection());
        StudyEditors.active(getSite().getPage()).ifPresent(e -> getSite().getPage().activate(e));
    }

    private void show(IStructuredSelection selection) {
        if (selection.getFirstElement() instanceof OutlineNode node) {
            StudyEditors.active(getSite().getPage()).ifPresent(editor -> show(editor, node));
        }
    }

    private static void show(StudyEditor editor, OutlineNode node) {
        if (node.element() == null) {
            editor.show(node.page());
        } else {
            editor.reveal(node.element(), null);
        }
    }

    @Override
    public void setFocus() {
        viewer.getControl().setFocus();
    }

    /** Branches as the nodes have them. */
    private static final class Content implements ITreeContentProvider {

        @Override
        public Object[] getElements(Object input) {
            return input instanceof StudySession session ? StudyOutline.of(session.study()).toArray() : new Object[0];
        }

        @Override
        public Object[] getChildren(Object node) {
            return ((OutlineNode) node).children().toArray();
        }

        @Override
        public Object getParent(Object node) {
            return ((OutlineNode) node).parent();
        }

        @Override
        public boolean hasChildren(Object node) {
            return !((OutlineNode) node).children().isEmpty();
        }
    }
}
