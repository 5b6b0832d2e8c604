package org.amberyard.report.papers;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.amberyard.core.progress.Progress;
import org.amberyard.report.StagedFiles;
import org.amberyard.report.document.DocumentFormat;

/** Writes documents into a folder: all of them or none. */
public final class DocumentFolder {
    private DocumentFolder() {
    }

    /**
     * What to write.
     *
     * @param kinds documents
     * @param formats formats of each
     */
    public record Wanted(Set<DocumentKind> kinds, Set<DocumentFormat> formats) {
        public Wanted {
            kinds = Set.copyOf(kinds);
            formats = Set.copyOf(formats);
        }
    }

    /**
     * Writes documents.
     *
     * @param folder is made when it is not there
     * @param progress hears of it; nothing is changed in the folder when it throws
     * @return the files in the order written
     */
    public static List<Path> write(PaperInput in, Wanted wanted, Path folder, Progress progress) throws IOException {
        Files.createDirectories(folder);
        try (StagedFiles files = new StagedFiles(folder)) {
            make(in, wanted, progress, (name, bytes) -> Files.write(files.add(name), bytes));
            return files.moveIntoPlace();
        }
    }

    /** What takes a file that has been made. */
    interface Taking {
        void file(String name, byte[] bytes) throws IOException;
    }

    /** Makes documents one by one. */
    static void make(PaperInput in, Wanted wanted, Progress progress, Taking taking) throws IOException {
        List<DocumentKind> kinds = Arrays.stream(DocumentKind.values()).filter(wanted.kinds()::contains).toList();
        for (int i = 0; i < kinds.size(); i++) {
            progress.at((double) i / kinds.size());
            for (Map.Entry<String, byte[]> file : kinds.get(i).files(in, wanted.formats(), progress.part(i, kinds.size()))
                    .entrySet()) {
                taking.file(file.getKey(), file.getValue());
            }
        }
        progress.at(1);
    }
}
