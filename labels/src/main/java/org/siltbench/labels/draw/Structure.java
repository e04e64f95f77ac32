package org.siltbench.labels.draw;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** The logical structure of a tagged document: which words belong to which part. */
final class Structure {

  private final PDStructureTreeRoot root = new PDStructureTreeRoot();
  private final Deque<PDStructureElement> open = new ArrayDeque<>();
  private final List<COSArray> owners = new ArrayList<>();
  private final List<PDPage> pages = new ArrayList<>();

  Structure() {
    PDStructureElement document = new PDStructureElement(StandardStructureTypes.DOCUMENT, root);
    root.appendKid(document);
    open.push(document);
  }

  void begin(String type) {
    PDStructureElement parent = open.element();
    PDStructureElement next = new PDStructureElement(type, parent);
    parent.appendKid(next);
    open.push(next);
    if (type.equals(StandardStructureTypes.TH)) {
      COSDictionary scope = new COSDictionary();
      scope.setName(COSName.O, "Table");
      scope.setName(COSName.getPDFName("Scope"), "Column");
      next.getCOSObject().setItem(COSName.A, scope);
    }
  }

  void describe(String alternate) {
    open.element().setAlternateDescription(alternate);
  }

  void end() {
    if (open.size() < 2) {
      throw new IllegalStateException("a part was ended that never began");
    }
    open.pop();
  }

  /** Claims the next piece of marked content on a page for the open part. */
  int claim(PDPage page) {
    COSArray onPage = ownersOf(page);
    PDStructureElement owner = open.element();
    if (owner.getPage() == null) {
      owner.setPage(page);
    }
    int mark = onPage.size();
    onPage.add(owner.getCOSObject());
    if (page.getCOSObject().equals(pageOf(owner))) {
      owner.appendKid(mark);
    } else {
      owner.appendKid(reference(page, mark));
    }
    return mark;
  }

  private static COSDictionary pageOf(PDStructureElement owner) {
    return owner.getCOSObject().getCOSDictionary(COSName.PG);
  }

  private static PDMarkedContentReference reference(PDPage page, int mark) {
    PDMarkedContentReference out = new PDMarkedContentReference();
    out.setPage(page);
    out.setMCID(mark);
    return out;
  }

  private COSArray ownersOf(PDPage page) {
    int at = pages.lastIndexOf(page);
    if (at < 0) {
      at = pages.size();
      pages.add(page);
      owners.add(new COSArray());
      page.setStructParents(at);
    }
    return owners.get(at);
  }

  String openType() {
    return open.element().getStructureType();
  }

  void attach(PDDocument document) {
    COSArray numbers = new COSArray();
    for (int i = 0; i < owners.size(); i++) {
      numbers.add(COSInteger.get(i));
      numbers.add(owners.get(i));
    }
    COSDictionary tree = new COSDictionary();
    tree.setItem(COSName.NUMS, numbers);
    root.setParentTree(new PDNumberTreeNode(tree, PDParentTreeValue.class));
    root.setParentTreeNextKey(owners.size());
    document.getDocumentCatalog().setStructureTreeRoot(root);
    PDMarkInfo info = new PDMarkInfo();
    info.setMarked(true);
    document.getDocumentCatalog().setMarkInfo(info);
  }
}
