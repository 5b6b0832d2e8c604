package org.amberyard.workbench.views;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;

/** The selection of a table of results: the cell in focus as a question. */
final class AskedCell implements ISelectionProvider {
    private final List<ISelectionChangedListener> listeners = new CopyOnWriteArrayList<>();
    private ISelection selection = StructuredSelection.EMPTY;

    @Override
    public void addSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.add(listener);
    }

    @Override
    public void removeSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.remove(listener);
    }

    @Override
    public ISelection getSelection() {
        return selection;
    }

    @Override
    public void setSelection(ISelection next) {
        selection = next;
        listeners.forEach(l -> l.selectionChanged(new SelectionChangedEvent(this, next)));
    }
}
