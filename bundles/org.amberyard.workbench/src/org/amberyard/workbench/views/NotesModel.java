package org.amberyard.workbench.views;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.meta.Phrase;
import org.amberyard.model.study.Study;
import org.amberyard.workbench.grid.GridModel;
import org.amberyard.workbench.grid.RowWords;
import org.amberyard.workbench.language.Words;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;

/** The notes of a study as a table. */
final class NotesModel implements GridModel {

    private record Noted(Sourced element, String where, String note) {
    }

    private final List<Noted> notes;

    private NotesModel(List<Noted> notes) {
        this.notes = notes;
    }

    /** No study, no notes. */
    static NotesModel empty() {
        return new NotesModel(List.of());
    }

    /** The notes in which words stand, in the order of the study. */
    static NotesModel of(Study study, String search) {
        RowWords words = new RowWords(search);
        List<Noted> found = new ArrayList<>();
        for (TreeIterator<EObject> all = study.eAllContents(); all.hasNext();) {
            EObject next = all.next();
            if (next instanceof Sourced element && element.getNote() != null && !element.getNote().isBlank()) {
                Noted noted = new Noted(element, Phrase.start(Words.withKind(element)), element.getNote());
                if (words.in(() -> Stream.of(noted.where(), noted.note()))) {
                    found.add(noted);
                }
            }
        }
        return new NotesModel(found);
    }

    /** The element of a row. */
    Sourced element(int row) {
        return notes.get(row).element();
    }

    @Override
    public Object subject(int row, int column) {
        return element(row);
    }

    @Override
    public int rows() {
        return notes.size();
    }

    @Override
    public int columns() {
        return 2;
    }

    @Override
    public String header(int column) {
        return column == 0 ? Messages.Notes_where : Messages.Notes_note;
    }

    @Override
    public String text(int row, int column) {
        Noted noted = notes.get(row);
        return column == 0 ? noted.where() : noted.note().replace('\n', ' ');
    }

    @Override
    public String fullText(int row, int column) {
        return column == 0 ? notes.get(row).where() : notes.get(row).note();
    }

    @Override
    public String tip(int row, int column) {
        return notes.get(row).note();
    }

    @Override
    public boolean stretchesLast() {
        return true;
    }
}
