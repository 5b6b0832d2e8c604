package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.io.StudyResource;
import org.amberyard.model.study.Study;
import org.amberyard.workbench.editor.StudyEditor;
import org.amberyard.workbench.editor.StudyInput;
import org.amberyard.workbench.session.SessionTools;
import org.amberyard.workbench.session.StudyLock;
import org.amberyard.workbench.session.StudySession;
import org.amberyard.workbench.session.UntitledStudy;
import org.eclipse.core.runtime.ILog;
import org.eclipse.emf.common.util.URI;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;

/** Opens studies in a window: files, new ones, and those that were never saved. */
public final class StudyOpener {

    private final IWorkbenchPage page;
    private final Supplier<SessionTools> tools;

    /** An opener for a window's page; every study is opened with tools of its own. */
    public StudyOpener(IWorkbenchPage page) {
        this(page, SessionTools::fresh);
    }

    /** An opener for a window's page and the tools that sessions work with. */
    public StudyOpener(IWorkbenchPage page, Supplier<SessionTools> tools) {
        this.page = page;
        this.tools = tools;
    }

    /** Opens a file; false when it cannot be, and then the user has been told why. */
    public boolean open(Path file) {
        Path absolute = file.toAbsolutePath().normalize();
        Optional<IEditorPart> already = opened(absolute);
        if (already.isPresent()) {
            page.activate(already.get());
            return true;
        }
        boolean shared = StudyLock.isTaken(absolute);
        if (shared && !mayShare(absolute)) {
            return true;
        }
        try {
            // What is kept beside a study that another program edits is that program's, which is alive.
            Optional<Path> kept = shared ? Optional.empty() : RecoveryFinder.ask(page.getWorkbenchWindow().getShell(), absolute);
            StudyResource resource = StudyFile.open(kept.orElse(absolute));
            edit(StudySession.open(resource, absolute, kept.isPresent(), tools.get()));
            RecentStudies.remember(absolute);
            return true;
        } catch (StudyFileException e) {
            MessageDialog.openError(page.getWorkbenchWindow().getShell(), Messages.Open_failed, e.getMessage());
            RecentStudies.forget(absolute);
            return false;
        }
    }

    /** A study that another program edits is opened as a copy, or all the same, or not at all; true for all the same. */
    private boolean mayShare(Path file) {
        int answer = MessageDialog.open(MessageDialog.WARNING, page.getWorkbenchWindow().getShell(), Messages.Open_takenTitle,
                NLS.bind(Messages.Open_taken, file.getFileName()), 0, Messages.Open_takenCopy, Messages.Open_takenShare,
                Messages.Open_takenNot);
        if (answer == 0) {
            openAsNew(file);
        }
        return answer == 1;
    }

    /** Opens what a file holds as a study of its own that is yet to be saved; the file stays as it is. */
    void openAsNew(Path file) {
        try {
            edit(StudySession.openUntitled(StudyFile.open(file), tools.get()));
        } catch (StudyFileException e) {
            MessageDialog.openError(page.getWorkbenchWindow().getShell(), Messages.Open_failed, e.getMessage());
        }
    }

    /** Opens a study that was just made; closing it asks whether it is to be saved. */
    void openNew(Study study) {
        StudyResource resource = new StudyResource(URI.createURI("untitled." + StudyFile.EXTENSION));
        resource.getContents().add(study);
        edit(StudySession.begin(resource, tools.get()));
    }

    /** Offers the studies that were never saved; true when one has been opened. */
    public boolean openUnsaved() {
        boolean opened = false;
        for (Path place : UntitledStudy.kept()) {
            opened |= openUnsaved(place);
        }
        return opened;
    }

    private boolean openUnsaved(Path place) {
        try {
            Optional<Path> kept = RecoveryFinder.ask(page.getWorkbenchWindow().getShell(), place);
            if (kept.isPresent()) {
                edit(StudySession.recoverUntitled(StudyFile.open(kept.get()), place, tools.get()));
            }
            return kept.isPresent();
        } catch (StudyFileException e) {
            MessageDialog.openError(page.getWorkbenchWindow().getShell(), Messages.Open_failed, e.getMessage());
            return false;
        }
    }

    private Optional<IEditorPart> opened(Path file) {
        for (IEditorReference reference : page.getEditorReferences()) {
            IEditorPart part = reference.getEditor(false);
            boolean same = part instanceof StudyEditor editor && editor.session().file().filter(file::equals).isPresent();
            if (same) {
                return Optional.of(part);
            }
        }
        return Optional.empty();
    }

    private void edit(StudySession session) {
        try {
            page.openEditor(new StudyInput(session), StudyEditor.ID);
        } catch (PartInitException e) {
            ILog.of(StudyOpener.class).error(e.getMessage(), e);
        }
    }
}
