package org.amberyard.workbench.session;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.amberyard.model.io.FileSum;
import org.amberyard.model.io.RecoveryFile;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.amberyard.workbench.language.Words;
import org.eclipse.core.runtime.ILog;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.eclipse.emf.edit.provider.ReflectiveItemProviderAdapterFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;

/** A study that is open: every edit goes through here as a command, and can be undone to the start of the session. */
public final class StudySession {

    private final List<SessionListener> listeners = new CopyOnWriteArrayList<>();
    private final EditHistory history;
    private final BasicCommandStack commands;
    private final AdapterFactoryEditingDomain domain;
    private final FigureReading figures = new FigureReading();
    private final Choices choices = new Choices(this::choiceChanged);
    private final Study study;
    private final Recomputation recomputation;
    private final RecoveryKeeper recovery;
    private final WhatIfWork whatIf;
    private Path file;
    /** The version of its file that it was opened from or saved to. */
    private FileSum version;
    private StudyLock lock;
    private int revision;
    /**
     * True as long as something that no edit takes back is in no file: changes of an earlier run, a study that was just made, or what was kept
     * with it since.
     */
    private boolean unsaved;
    private Evaluation evaluation = Evaluation.NONE;

    private StudySession(Resource resource, Path file, Path untitledPlace, boolean unsaved, SessionTools tools) {
        this.file = file;
        this.version = Optional.ofNullable(file).filter(f -> unsaved).flatMap(RecoveryFile::changedVersion).orElseGet(() -> FileSum.of(file));
        this.lock = StudyLock.take(file);
        this.unsaved = unsaved;
        study = (Study) resource.getContents().get(0);
        history = new EditHistory(study);
        commands = history.stack();
        domain = new AdapterFactoryEditingDomain(new ReflectiveItemProviderAdapterFactory(), commands);
        domain.getResourceSet().getResources().add(resource);
        recomputation = new Recomputation(this, tools.evaluator(), Display.getCurrent());
        recovery = new RecoveryKeeper(this, Display.getCurrent(), tools.keptAfterMs(), untitledPlace, unsaved);
        whatIf = new WhatIfWork(this, Display.getCurrent());
        commands.addCommandStackListener(e -> edited());
        if (unsaved) {
            recovery.studyChanged();
        }
        recomputation.start();
    }

    /**
     * Opens a study of a file.
     *
     * @param resource the study's resource
     * @param file the file that it is saved to
     * @param recovered true for unsaved changes of an earlier run
     * @param tools what the session works with
     */
    public static StudySession open(Resource resource, Path file, boolean recovered, SessionTools tools) {
        return new StudySession(resource, file, UntitledStudy.freshPlace(), recovered, tools);
    }

    /** Opens a study that has no file yet. */
    public static StudySession openUntitled(Resource resource, SessionTools tools) {
        return new StudySession(resource, null, UntitledStudy.freshPlace(), false, tools);
    }

    /** Opens a study that was just made and is nowhere else. */
    public static StudySession begin(Resource resource, SessionTools tools) {
        return new StudySession(resource, null, UntitledStudy.freshPlace(), true, tools);
    }

    /** Opens a study that has no file yet, with the unsaved changes that an earlier run has left at a place. */
    public static StudySession recoverUntitled(Resource resource, Path place, SessionTools tools) {
        return new StudySession(resource, null, place, true, tools);
    }

    /** The study. */
    public Study study() {
        return study;
    }

    /** The file that the study is saved to. */
    public Optional<Path> file() {
        return Optional.ofNullable(file);
    }

    /** The folder of that file, where dialogs of other files begin. */
    public Optional<String> folder() {
        return file().map(f -> f.toAbsolutePath().getParent().toString());
    }

    /** Name for titles: that of the file, or of the study as long as it has none. */
    public String title() {
        String name = study.getName() == null || study.getName().isBlank() ? Messages.Session_untitled : study.getName();
        return file().map(f -> f.getFileName().toString()).orElse(name);
    }

    /** What is known of the results. */
    public Evaluation evaluation() {
        return evaluation;
    }

    /** What the user looks at. */
    public Choices choices() {
        return choices;
    }

    /** Figures of narratives of its results. */
    public FigureReading figures() {
        return figures;
    }

    /** Its what-if. */
    public WhatIfWork whatIf() {
        return whatIf;
    }

    /** Makes the commands of edits. */
    public EditingDomain domain() {
        return domain;
    }

    /** True when something else has changed the study's file since it was opened or saved here. */
    public boolean isChangedOutside() {
        return file != null && Files.exists(file) && !version.equals(FileSum.of(file));
    }

    /** The version of its file that was opened, or saved last; without a file none. */
    FileSum version() {
        return version;
    }

    /** True when another session or program was editing the study's file when this one took it up. */
    boolean isShared() {
        return lock.isOthers();
    }

    /** True when closing would lose something. */
    public boolean isDirty() {
        return unsaved || commands.isSaveNeeded();
    }

    /** Carries out an edit that has a name. */
    public void execute(Command command) {
        execute(command, command.getLabel());
    }

    /** Carries out an edit under a name. */
    public void execute(Command command, String label) {
        history.execute(command, label);
    }

    /** Sets a field of an element, as an edit that is called by the field. */
    public void set(EObject element, EStructuralFeature field, Object value) {
        execute(SetCommand.create(domain, element, field, value), NLS.bind(Messages.Session_set, Words.field(field).label()));
    }

    /** Writes something into the study that is no edit: undo passes it by, figures do not follow from it, and it is saved with the study. */
    public void keep(Keeping what) {
        history.keep(what);
        unsaved = true;
        recomputation.narrativesKept();
        recovery.studyChanged();
        tell(l -> l.studyChanged(this));
        tell(l -> l.fileChanged(this));
    }

    /** All its edits. */
    public EditHistory history() {
        return history;
    }

    /** Stops the evaluation that is under way. */
    public void stopEvaluation() {
        recomputation.halt();
    }

    /** Evaluates the study again, after that was stopped. */
    public void evaluateAgain() {
        recomputation.start();
    }

    /** Takes the last edit back. */
    public void undo() {
        history.undoable().ifPresent(step -> history.goTo(history.done() - 1));
    }

    /** Carries the edit that was last taken back out again. */
    public void redo() {
        history.redoable().ifPresent(step -> history.goTo(history.done() + 1));
    }

    /**
     * Saves the study to a file, which becomes its own.
     *
     * @throws StudyFileException when it cannot be saved; the session is then as it was
     */
    public void saveAs(Path target) throws StudyFileException {
        StudyFile.save(study, target);
        recovery.discard();
        if (!target.equals(file)) {
            lock.close();
            lock = StudyLock.take(target);
        }
        file = target;
        version = FileSum.of(target);
        unsaved = false;
        commands.saveIsDone();
        if (!isShared()) {
            forgetRecovery(target);
        }
        whatIf.saved(target);
        tell(l -> l.fileChanged(this));
    }

    /** The study is safe on the disk; a recovery file that cannot be removed must not look like a failed save. */
    private static void forgetRecovery(Path target) {
        try {
            RecoveryFile.discard(target);
        } catch (StudyFileException e) {
            ILog.of(StudySession.class).warn(e.getMessage(), e);
        }
    }

    /** Ends the session; unsaved changes are given up. */
    public void close() {
        recomputation.stop();
        whatIf.stop();
        recovery.discard();
        lock.close();
        listeners.clear();
    }

    /** Tells the listener of everything that happens from now on. */
    public void addListener(SessionListener listener) {
        listeners.add(listener);
    }

    /** Tells the listener nothing more. */
    public void removeListener(SessionListener listener) {
        listeners.remove(listener);
    }

    /** Counts the edits, undone ones too: as long as it is the same, so is all that figures follow from. */
    public int revision() {
        return revision;
    }

    private void edited() {
        revision++;
        recomputation.studyChanged();
        recovery.studyChanged();
        tell(l -> l.studyChanged(this));
        tell(l -> l.fileChanged(this));
    }

    private void choiceChanged() {
        tell(l -> l.choiceChanged(this));
    }

    void publish(Evaluation next) {
        evaluation = next;
        tell(l -> l.evaluationChanged(this));
        whatIf.evaluated();
    }

    void whatIfChanged() {
        tell(l -> l.whatIfChanged(this));
    }

    private void tell(Consumer<SessionListener> news) {
        listeners.forEach(news);
    }
}
