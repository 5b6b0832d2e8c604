package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.StudyFolderImport;
import org.amberyard.model.study.Study;

/** Reads a folder of CSV files in the background. */
public final class FolderReading extends FileReading<Study> {

    /** Will read a folder. */
    public FolderReading(Path folder) {
        super(folder);
    }

    @Override
    protected Study read(Path path) throws ImportException {
        return StudyFolderImport.read(path);
    }
}
