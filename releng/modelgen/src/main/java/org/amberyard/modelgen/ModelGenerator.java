package org.amberyard.modelgen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.emf.codegen.ecore.generator.Generator;
import org.eclipse.emf.codegen.ecore.generator.GeneratorAdapterFactory;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelPackage;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenBaseGeneratorAdapter;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenModelGeneratorAdapterFactory;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.ecore.EPackage;

/**
 * Turns a folder of Ecore files into Java source.
 *
 * <p>Arguments: the folder with the {@code *.ecore} files, the folder to fill with Java source, and the file
 * that keeps the fingerprint of the last run. Nothing is written while that fingerprint still fits.
 */
public final class ModelGenerator {

    private final EcoreFolder ecores;
    private final Path output;

    ModelGenerator(EcoreFolder ecores, Path output) {
        this.ecores = ecores;
        this.output = output;
    }

    /**
     * Runs the generator.
     *
     * @param arguments Ecore folder, output folder, fingerprint file
     * @throws IOException if a file cannot be read or written
     */
    public static void main(String[] arguments) throws IOException {
        if (arguments.length != 3) {
            throw new IllegalArgumentException("Expected: ECORE_FOLDER OUTPUT_FOLDER FINGERPRINT_FILE");
        }
        Path output = Path.of(arguments[1]).toAbsolutePath().normalize();
        EcoreFolder ecores = new EcoreFolder(Path.of(arguments[0]).toAbsolutePath().normalize());
        Fingerprint fingerprint = Fingerprint.of(ecores.files());
        Path stamp = Path.of(arguments[2]);
        if (Files.isDirectory(output) && fingerprint.matches(stamp)) {
            return;
        }
        Files.deleteIfExists(stamp);
        new ModelGenerator(ecores, output).generate();
        fingerprint.writeTo(stamp);
    }

    /**
     * Replaces the output folder by freshly generated source.
     *
     * @throws IOException if a file cannot be read or written
     */
    void generate() throws IOException {
        List<EPackage> packages = ecores.load();
        Folders.empty(output);
        // Without a workspace EMF finds the project's folder through this map only.
        GenModelSettings.mapProjectTo(output.getParent());
        run(GenModelSettings.create(packages, output.getFileName().toString()));
        System.out.printf("Generated %d packages from %s%n", packages.size(), ecores);
    }

    private static void run(GenModel genModel) {
        GeneratorAdapterFactory.Descriptor.Registry.INSTANCE.addDescriptor(
                GenModelPackage.eNS_URI, GenModelGeneratorAdapterFactory.DESCRIPTOR);
        Generator generator = new Generator();
        generator.setInput(genModel);
        Diagnostic result = generator.generate(
                genModel, GenBaseGeneratorAdapter.MODEL_PROJECT_TYPE, new BasicMonitor());
        if (result.getSeverity() != Diagnostic.OK) {
            throw new IllegalStateException(Problems.describe(result));
        }
    }
}
