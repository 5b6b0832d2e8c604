package org.amberyard.batch;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.StudyFolderExport;
import org.amberyard.exchange.StudyFolderImport;
import org.amberyard.model.study.Study;

/** Writes a study as a folder of CSV files, and holds that the folder reads back. */
final class ExportVerb implements Verb {

    @Override
    public String name() {
        return "export";
    }

    @Override
    public String usage() {
        return "export STUDY FOLDER";
    }

    @Override
    public String summary() {
        return "writes STUDY as CSV files into FOLDER, one for each kind of element, from which “import” makes the same study";
    }

    @Override
    public Set<String> options() {
        return Set.of();
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse, IOException {
        Arguments.StudyAndFolder paths = arguments.studyAndFolder(console.folder());
        Study study = StudyArgument.load(paths.study());
        Path folder = paths.folder();
        refuse(folder);
        try {
            StudyFolderExport.write(study, folder);
        } catch (FileSystemException e) {
            throw new WrongUse("FOLDER is " + folder + ", where " + e.getFile() + " cannot be written; choose another folder.");
        }
        try {
            StudyFolderImport.read(folder);
        } catch (ImportException e) {
            throw new WrongUse("“" + study.getName() + "” is in " + folder + ", but cannot be imported from there as it is; give elements of a kind "
                    + "different names in the study and export it again:" + System.lineSeparator() + e.getMessage());
        }
        console.out().println("“" + study.getName() + "” is in " + folder);
        return ExitCode.DONE;
    }

    /** Tables of another study that are left in a folder would be read as parts of this one. */
    private static void refuse(Path folder) throws WrongUse, IOException {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new WrongUse("FOLDER is " + folder + ", which is a file; give a folder, new or empty.");
        }
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                List<String> names = files.map(f -> f.getFileName().toString()).sorted().limit(2).toList();
                if (!names.isEmpty()) {
                    throw new WrongUse("FOLDER is " + folder + ", in which something stands already (" + String.join(", ", names)
                            + "); give a new or an empty one, so that no old table is taken for a part of the study.");
                }
            }
        }
    }
}
