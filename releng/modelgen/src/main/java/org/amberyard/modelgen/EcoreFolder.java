package org.amberyard.modelgen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.util.Diagnostician;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;

/** A folder of Ecore files that refer to each other by file name. */
final class EcoreFolder {

    private final Path folder;

    EcoreFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * Lists the Ecore files, in the order of their names so that every run does the same.
     *
     * @return the files
     * @throws IOException if the folder cannot be read
     */
    List<Path> files() throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.filter(file -> file.toString().endsWith(".ecore")).sorted().toList();
        }
    }

    /**
     * Loads and checks all packages, with the references between them resolved.
     *
     * @return the root package of each file
     * @throws IOException if the folder cannot be read
     */
    List<EPackage> load() throws IOException {
        ResourceSet resources = new ResourceSetImpl();
        resources.getResourceFactoryRegistry().getExtensionToFactoryMap()
                .put("ecore", new EcoreResourceFactoryImpl());
        List<EPackage> packages = new ArrayList<>();
        for (Path file : files()) {
            Resource resource = resources.getResource(URI.createFileURI(file.toString()), true);
            packages.add((EPackage) resource.getContents().get(0));
        }
        checkReferences(resources);
        packages.forEach(EcoreFolder::checkPackage);
        return packages;
    }

    private static void checkReferences(ResourceSet resources) {
        EcoreUtil.resolveAll(resources);
        var unresolved = EcoreUtil.UnresolvedProxyCrossReferencer.find(resources);
        if (!unresolved.isEmpty()) {
            throw new IllegalStateException("Unresolved references: " + unresolved.keySet());
        }
    }

    private static void checkPackage(EPackage ePackage) {
        Diagnostic diagnostic = Diagnostician.INSTANCE.validate(ePackage);
        if (diagnostic.getSeverity() >= Diagnostic.ERROR) {
            throw new IllegalStateException(Problems.describe(diagnostic));
        }
    }

    @Override
    public String toString() {
        return folder.toString();
    }
}
