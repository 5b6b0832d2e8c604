package org.amberyard.workbench.fields;

import java.util.List;
import java.util.function.Supplier;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.CommandParameter;
import org.eclipse.emf.edit.command.DeleteCommand;
import org.eclipse.osgi.util.NLS;

/** The elements of one kind in a list of the study; they come and go by commands. */
public final class ElementList {

    private final StudySession session;
    private final Supplier<EObject> owner;
    private final EReference containment;
    private final EClass type;
    private final boolean typed;
    private final Supplier<List<EObject>> shown;

    /**
     * A list.
     *
     * @param owner the element that holds the list now; may answer null, then the list is empty
     * @param containment the list
     * @param type the kind of the elements that are of interest
     */
    public ElementList(StudySession session, Supplier<EObject> owner, EReference containment, EClass type) {
        this(session, owner, containment, type, true, null);
    }

    private ElementList(StudySession session, Supplier<EObject> owner, EReference containment, EClass type,
            boolean typed, Supplier<List<EObject>> shown) {
        this.session = session;
        this.owner = owner;
        this.containment = containment;
        this.type = type;
        this.typed = typed;
        this.shown = shown;
    }

    /** The same list, for elements that are imported and never typed in. */
    public ElementList importedOnly() {
        return new ElementList(session, owner, containment, type, false, shown);
    }

    /** The same list for new elements, in a table that shows more than its elements of the kind. */
    public ElementList showing(Supplier<List<EObject>> elements) {
        return new ElementList(session, owner, containment, type, typed, elements);
    }

    /** Name of the list in the model. */
    String containmentName() {
        return containment.getName();
    }

    EClass type() {
        return type;
    }

    /** The element that holds the list now, or null. */
    EObject owner() {
        return owner.get();
    }

    /** True when elements of the kind can be typed in. */
    boolean isTyped() {
        return typed;
    }

    boolean canGrow() {
        return typed && owner.get() != null && containment.isMany() && !type.isAbstract();
    }

    /** The elements, in the order of the study. */
    public List<EObject> elements() {
        return shown == null ? contained() : shown.get();
    }

    private List<EObject> contained() {
        EObject holder = owner.get();
        if (holder == null) {
            return List.of();
        }
        Object value = holder.eGet(containment);
        List<?> all = value instanceof List<?> list ? list : value == null ? List.of() : List.of(value);
        return all.stream().filter(type::isInstance).map(EObject.class::cast).toList();
    }

    /** A new element with sensible values; not yet in the list. */
    EObject create() {
        return new NewElement(type, elements(), session.study()).create();
    }

    /** Puts a new element behind another, or last when there is none. */
    Command addition(EObject element, EObject behind) {
        List<?> all = (List<?>) owner.get().eGet(containment);
        int index = behind == null ? CommandParameter.NO_INDEX : all.indexOf(behind) + 1;
        AddCommand add = new AddCommand(session.domain(), owner.get(), containment, element, index);
        add.setLabel(NLS.bind(Messages.Add_named, Words.kind(type)));
        return add;
    }

    /** Takes elements out, and out of every field that refers to them. */
    void delete(List<EObject> elements) {
        DeleteCommand delete = new DeleteCommand(session.domain(), elements);
        delete.setLabel(NLS.bind(Messages.Delete_rows, elements.size() == 1 ? Words.withKind(elements.get(0))
                : elements.size() + " × " + Words.kind(type)));
        session.execute(delete);
    }
}
