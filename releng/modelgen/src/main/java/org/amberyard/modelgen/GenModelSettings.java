package org.amberyard.modelgen;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.emf.codegen.ecore.genmodel.GenJDKLevel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelFactory;
import org.eclipse.emf.codegen.ecore.genmodel.GenPackage;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.plugin.EcorePlugin;

/** How the study's model is generated: the choices an EMF genmodel file would hold. */
final class GenModelSettings {

    private static final String BASE_PACKAGE = "org.amberyard.model";
    private static final String PROJECT = "org.amberyard.model";

    private GenModelSettings() {
    }

    /**
     * Lets EMF write into a plain folder as if it were the model's project in a workspace.
     *
     * @param folder the folder that stands for the project
     */
    static void mapProjectTo(Path folder) {
        EcorePlugin.getPlatformResourceMap().put(PROJECT, URI.createFileURI(folder + "/"));
    }

    /**
     * Builds the generator model for the given packages.
     *
     * @param packages all packages of the model
     * @param sourceFolder the name of the source folder inside the project
     * @return a generator model ready to run
     */
    static GenModel create(List<EPackage> packages, String sourceFolder) {
        GenModel genModel = GenModelFactory.eINSTANCE.createGenModel();
        genModel.setModelName("Amberyard");
        // A plug-in ID would make EMF write a plugin.xml and a manifest of its own; the bundle has both by hand.
        genModel.setModelPluginID("");
        genModel.setModelDirectory("/" + PROJECT + "/" + sourceFolder);
        genModel.setComplianceLevel(GenJDKLevel.JDK170_LITERAL);
        genModel.setSuppressEMFModelTags(true);
        // Labels, tooltips and the data dictionary read the documentation at run time.
        genModel.setSuppressGenModelAnnotations(false);
        genModel.setUpdateClasspath(false);
        genModel.setForceOverwrite(true);
        genModel.setCanGenerate(true);
        genModel.initialize(packages);
        genModel.getGenPackages().forEach(GenModelSettings::configure);
        check(genModel);
        return genModel;
    }

    private static void configure(GenPackage genPackage) {
        String name = genPackage.getEcorePackage().getName();
        genPackage.setBasePackage(BASE_PACKAGE);
        genPackage.setPrefix(Character.toUpperCase(name.charAt(0)) + name.substring(1));
    }

    private static void check(GenModel genModel) {
        Diagnostic diagnostic = genModel.diagnose();
        if (diagnostic.getSeverity() >= Diagnostic.ERROR) {
            throw new IllegalStateException(Problems.describe(diagnostic));
        }
    }
}
