package org.amberyard.architecture;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Finds and parses what people have written; generated code is left out. */
final class Sources {
    /** The bundles of the product, in the order in which one may use another. */
    static final List<String> PRODUCT = List.of("core", "model", "study", "exchange", "charts", "report", "batch", "workbench");

    private static final String PREFIX = "org.amberyard.";

    private Sources() {
    }

    /** The folder that holds all bundles. */
    static Path bundles() {
        return Path.of("").toAbsolutePath().getParent();
    }

    /** The folder of the whole project. */
    static Path project() {
        return bundles().getParent();
    }

    /** The files of the bundles that make the product. */
    static List<SourceFile> ofProduct() {
        return PRODUCT.stream().flatMap(bundle -> ofBundle(bundle).stream()).toList();
    }

    /** The files of all bundles, tests included, and of the programs beside them. */
    static List<SourceFile> ofEverything() {
        List<SourceFile> all = new ArrayList<>();
        for (Path folder : children(bundles())) {
            String name = folder.getFileName().toString();
            if (name.startsWith(PREFIX) && Files.isDirectory(folder.resolve("src"))) {
                all.addAll(ofBundle(name.substring(PREFIX.length())));
            }
        }
        for (String program : List.of("benchmarks", "modelgen", "seeds")) {
            all.addAll(parse(program, javaFiles(project().resolve("releng").resolve(program).resolve("src"))));
        }
        return all;
    }

    /** The files of a bundle, named without {@code org.amberyard.}. */
    static List<SourceFile> ofBundle(String bundle) {
        return parse(bundle, javaFiles(bundles().resolve(PREFIX + bundle).resolve("src")));
    }

    /** All files under a folder whose names end in one of the endings, without what is built. */
    static List<Path> files(Path folder, String... endings) {
        try (Stream<Path> found = Files.walk(folder)) {
            return found.filter(Files::isRegularFile)
                    .filter(path -> Stream.of(endings).anyMatch(path.toString()::endsWith))
                    .filter(path -> !isBuilt(folder.relativize(path))).sorted().toList();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private static boolean isBuilt(Path path) {
        for (int part = 0; part < path.getNameCount(); part++) {
            String name = path.getName(part).toString();
            // The folder of the target definition is the one that bears the name and is written by hand.
            boolean written = part > 0 && "releng".equals(path.getName(part - 1).toString());
            if ("target".equals(name) && !written || "src-gen".equals(name) || name.startsWith(".") && name.length() > 1) {
                return true;
            }
        }
        return false;
    }

    private static List<Path> javaFiles(Path folder) {
        return Files.isDirectory(folder) ? files(folder, ".java") : List.of();
    }

    private static List<Path> children(Path folder) {
        try (Stream<Path> found = Files.list(folder)) {
            return found.sorted().toList();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private static List<SourceFile> parse(String bundle, List<Path> paths) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
            JavacTask task = (JavacTask) compiler.getTask(null, manager, null, List.of("-proc:none"), null,
                    manager.getJavaFileObjectsFromPaths(paths));
            List<SourceFile> files = new ArrayList<>();
            for (CompilationUnitTree unit : task.parse()) {
                Path path = Path.of(unit.getSourceFile().toUri());
                files.add(new SourceFile(bundle, path, Files.readString(path), unit, Trees.instance(task).getSourcePositions()));
            }
            return files;
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}
