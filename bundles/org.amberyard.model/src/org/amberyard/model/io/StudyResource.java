package org.amberyard.model.io;

import java.util.Map;
import java.util.WeakHashMap;
import org.amberyard.model.meta.ModelPackages;
import org.amberyard.model.study.Study;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.xmi.XMLHelper;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;

/**
 * A study as XML that people can read and compare: one value on each line, defaults spelled out so that a later program
 * with other defaults reads the same study, and an id for every element that it keeps for good.
 */
public final class StudyResource extends XMIResourceImpl {
    /** So narrow that the writer begins a new line for each value: one edit changes one line. */
    private static final int ONE_VALUE_PER_LINE = 1;

    /** Ids of elements taken out, for when an undo or a move puts them back. */
    private final Map<EObject, String> formerIds = new WeakHashMap<>();

    /** An empty resource; a study is added to its contents. */
    public StudyResource(URI uri) {
        super(uri);
        // Outside Eclipse nobody else registers the packages that the file names.
        ModelPackages.all();
        setEncoding("UTF-8");
        configureSaving(getDefaultSaveOptions());
    }

    private static void configureSaving(Map<Object, Object> options) {
        options.put(XMLResource.OPTION_LINE_WIDTH, ONE_VALUE_PER_LINE);
        options.put(XMLResource.OPTION_KEEP_DEFAULT_CONTENT, Boolean.TRUE);
        options.put(XMLResource.OPTION_PROCESS_DANGLING_HREF, XMLResource.OPTION_PROCESS_DANGLING_HREF_THROW);
        options.put(Resource.OPTION_LINE_DELIMITER, "\n");
    }

    /** Gives an id to every element that has none: its kind and the next free number of the kind. */
    public void assignIds() {
        IdNumbering numbering = new IdNumbering(getEObjectToIDMap().values());
        getAllContents().forEachRemaining(element -> {
            if (getID(element) == null) {
                setID(element, numbering.next(element.eClass()));
            }
        });
    }

    /**
     * A copy of a study in a resource of its own. Elements keep the ids that they have in a study resource; if the study is
     * in one, elements without an id get theirs there first, so that it lasts.
     */
    static StudyResource copyOf(Study study, URI uri) {
        StudyResource copy = new StudyResource(uri);
        EcoreUtil.Copier copier = new EcoreUtil.Copier();
        copy.getContents().add(copier.copy(study));
        copier.copyReferences();
        if (study.eResource() instanceof StudyResource own) {
            own.assignIds();
            copier.forEach((from, to) -> copy.setID(to, own.getID(from)));
        }
        copy.assignIds();
        return copy;
    }

    @Override
    protected XMLHelper createXMLHelper() {
        return new FormerNameHelper(this);
    }

    @Override
    protected boolean useIDs() {
        return true;
    }

    @Override
    protected void attachedHelper(EObject element) {
        super.attachedHelper(element);
        String former = formerIds.remove(element);
        if (former != null && getID(element) == null && !getIDToEObjectMap().containsKey(former)) {
            setID(element, former);
        }
    }

    @Override
    protected void detachedHelper(EObject element) {
        String id = getID(element);
        super.detachedHelper(element);
        if (id != null) {
            formerIds.put(element, id);
        }
    }
}
