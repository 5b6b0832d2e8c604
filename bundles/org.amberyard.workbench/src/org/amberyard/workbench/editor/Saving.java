package org.amberyard.workbench.editor;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.ISaveablePart2;

/** Saves a study, asking for a place when it has none. */
final class Saving {

    private final Shell shell;
    private final StudySession session;

    Saving(Shell shell, StudySession session) {
        this.shell = shell;
        this.session = session;
    }

    /** Asks whether to save before the study is closed; answers as the platform wants it. */
    int ask() {
        int answer = MessageDialog.open(MessageDialog.QUESTION_WITH_CANCEL, shell, Messages.Editor_closeTitle,
                NLS.bind(Messages.Editor_closeAsk, session.title()), 0, Messages.Editor_closeSave, Messages.Editor_closeDiscard,
                IDialogConstants.CANCEL_LABEL);
        return answer == 0 ? ISaveablePart2.YES : answer == 1 ? ISaveablePart2.NO : ISaveablePart2.CANCEL;
    }

    /** Saves to the study's own file; false when the user or the disk would not have it. */
    boolean save() {
        return session.isChangedOutside() ? saveBesideOthers() : session.file().map(this::write).orElseGet(this::saveAs);
    }

    /** Another program has saved to the file meanwhile: both versions can be kept, or the other one replaced. */
    private boolean saveBesideOthers() {
        int answer = MessageDialog.open(MessageDialog.WARNING, shell, Messages.Editor_changedTitle,
                NLS.bind(Messages.Editor_changedOutside, session.file().map(Path::getFileName).orElseThrow()), 0,
                Messages.Editor_saveOther, Messages.Editor_replace, IDialogConstants.CANCEL_LABEL);
        return switch (answer) {
            case 0 -> saveAs();
            case 1 -> session.file().map(this::write).orElse(false);
            default -> false;
        };
    }

    /** Saves to a file that the user names. */
    boolean saveAs() {
        return target().map(this::write).orElse(false);
    }

    private boolean write(Path target) {
        try {
            session.saveAs(target);
            return true;
        } catch (StudyFileException e) {
            // What has not been saved stays open and is kept; another place may take it.
            int answer = MessageDialog.open(MessageDialog.ERROR, shell, Messages.Editor_saveFailed, e.getMessage(), 0,
                    Messages.Editor_saveOther, IDialogConstants.CANCEL_LABEL);
            return answer == 0 && saveAs();
        }
    }

    private Optional<Path> target() {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(Messages.Editor_saveAs);
        dialog.setFilterExtensions(new String[] {"*." + StudyFile.EXTENSION});
        dialog.setFilterNames(new String[] {Messages.Editor_fileKind});
        dialog.setOverwrite(true);
        session.file().ifPresent(f -> dialog.setFilterPath(f.toAbsolutePath().getParent().toString()));
        dialog.setFileName(session.file().map(f -> f.getFileName().toString()).orElse(Messages.Editor_unnamed));
        return Optional.ofNullable(dialog.open()).flatMap(this::completed);
    }

    /** The dialog has asked about the name as typed; one that gets its ending here has not been asked about yet. */
    private Optional<Path> completed(String name) {
        if (name.endsWith("." + StudyFile.EXTENSION)) {
            return Optional.of(Path.of(name));
        }
        Path file = Path.of(name + "." + StudyFile.EXTENSION);
        boolean free = !Files.exists(file) || MessageDialog.openConfirm(shell, Messages.Editor_saveAs,
                NLS.bind(Messages.Editor_overwrite, file.getFileName()));
        return free ? Optional.of(file) : Optional.empty();
    }
}
