package org.amberyard.workbench.language;

import java.util.Locale;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.ModelWords;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.common.util.Enumerator;

/** Words of the window in the language of this run, for what the model and the layers below say in English. */
public final class Words {
    private static final ModelWords MODEL = ModelWords.of(Locale.getDefault());
    private static final Catalogue CATALOGUE = new Catalogue(Locale.getDefault(), Locale.getDefault(Locale.Category.FORMAT));
    private static final LocalFigures FIGURES = new LocalFigures(Locale.getDefault(Locale.Category.FORMAT));

    private Words() {
    }

    /** Labels, meanings and choices of the model. */
    public static ModelWords model() {
        return MODEL;
    }

    /** What the model says of a field. */
    public static FieldInfo field(EStructuralFeature feature) {
        return MODEL.field(feature);
    }

    /** Name of a kind of element. */
    public static String kind(EClass type) {
        return MODEL.kind(type);
    }

    /** A choice that a field holds. */
    public static String choice(EEnum choices, Enumerator value) {
        return MODEL.choice(choices, value);
    }

    /** A text of the layers below; as it is where the language has no other. */
    public static String say(String english) {
        return CATALOGUE.say(english);
    }

    /** A figure of the layers below, as the locale writes it. */
    public static String figure(String text) {
        return FIGURES.of(text);
    }

    /** Name of an element: the user's own as it is, one made of words of the model in the language. */
    public static String name(EObject element) {
        String name = ElementNames.read(element, MODEL);
        EStructuralFeature own = element == null ? null : element.eClass().getEStructuralFeature("name");
        return own != null && name.equals(element.eGet(own)) ? name : say(name);
    }

    /** Kind and name of an element, and its owner's where several could own it. */
    public static String withKind(EObject element) {
        return ElementNames.withKind(element, MODEL, Words::name);
    }
}
