package org.amberyard.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.amberyard.model.fleet.MaintenanceTask;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** The default tasks of the shop, a table like that of a study and read like it: common practice, no source. */
public final class DefaultTasks {
    private static final List<String> TABLES = List.of("maintenance_tasks.csv", "sources.csv");

    private DefaultTasks() {
    }

    /** Fresh copies of the default tasks, each with the note that it is assumed. */
    public static List<MaintenanceTask> all() {
        try {
            Path folder = Files.createTempDirectory("tasks");
            try {
                for (String table : TABLES) {
                    unpack(table, folder.resolve(table));
                }
                return List.copyOf(EcoreUtil.copyAll(StudyFolderImport.read(folder).getMaintenanceTasks()));
            } finally {
                for (String table : TABLES) {
                    Files.deleteIfExists(folder.resolve(table));
                }
                Files.delete(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ImportException e) {
            throw new IllegalStateException(e.getMessage(), e);
        }
    }

    private static void unpack(String table, Path target) throws IOException {
        try (InputStream in = DefaultTasks.class.getResourceAsStream("tasks/" + table)) {
            Files.copy(in, target);
        }
    }
}
