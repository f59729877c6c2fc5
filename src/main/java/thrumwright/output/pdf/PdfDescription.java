package thrumwright.output.pdf;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Calendar;
import java.util.GregorianCalendar;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import thrumwright.output.page.Markup;

/** What a PDF says about itself: title, language, the standards it keeps, and what its colours mean. */
final class PdfDescription {
    private static final String PROGRAM = "Thrumwright";
    private static final String SRGB = "sRGB IEC61966-2.1";
    /** The extension schema is asked for by ISO 19005-2, 6.6.2.3, since PDF/A itself doesn't know PDF/UA's marks. */
    private static final String METADATA = """
            <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/">
             <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
              <rdf:Description rdf:about=""
                xmlns:dc="http://purl.org/dc/elements/1.1/"
                xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
                xmlns:xmp="http://ns.adobe.com/xap/1.0/"
                xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"
                xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"
                xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
                xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
                xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
               <dc:title><rdf:Alt><rdf:li xml:lang="x-default">{title}</rdf:li></rdf:Alt></dc:title>
               <dc:language><rdf:Bag><rdf:li>en-GB</rdf:li></rdf:Bag></dc:language>
               <pdf:Producer>Thrumwright</pdf:Producer>
               <xmp:CreatorTool>Thrumwright</xmp:CreatorTool>
               <xmp:CreateDate>{date}</xmp:CreateDate>
               <xmp:ModifyDate>{date}</xmp:ModifyDate>
               <pdfaid:part>2</pdfaid:part>
               <pdfaid:conformance>A</pdfaid:conformance>
               <pdfuaid:part>1</pdfuaid:part>
               <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
                <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
                <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
                <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
                <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
                 <pdfaProperty:name>part</pdfaProperty:name>
                 <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
                 <pdfaProperty:category>internal</pdfaProperty:category>
                 <pdfaProperty:description>Part of ISO 14289 that is kept</pdfaProperty:description>
                </rdf:li></rdf:Seq></pdfaSchema:property>
               </rdf:li></rdf:Bag></pdfaExtension:schemas>
              </rdf:Description>
             </rdf:RDF>
            </x:xmpmeta>
            <?xpacket end="r"?>
            """;

    private PdfDescription() {}

    static void describe(PDDocument document, String wanted, ZonedDateTime written) throws IOException {
        // XML can't hold control characters, and the title must be the same in both places
        String title = wanted.replaceAll("\\p{Cntrl}", " ");
        information(document.getDocumentInformation(), title, written);
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        catalog.setVersion("1.7");
        catalog.setLanguage("en-GB");
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        preferences.setDisplayDocTitle(true);
        catalog.setViewerPreferences(preferences);
        PDMarkInfo marked = new PDMarkInfo();
        marked.setMarked(true);
        catalog.setMarkInfo(marked);
        byte[] metadata = METADATA.replace("{title}", Markup.escaped(title))
                .replace("{date}", written.format(DateTimeFormatter.ISO_OFFSET_DATE_TIME))
                .getBytes(StandardCharsets.UTF_8);
        catalog.setMetadata(new PDMetadata(document, new ByteArrayInputStream(metadata)));
        catalog.addOutputIntent(colours(document));
    }

    private static void information(PDDocumentInformation information, String title, ZonedDateTime written) {
        information.setTitle(title);
        information.setCreator(PROGRAM);
        information.setProducer(PROGRAM);
        Calendar when = GregorianCalendar.from(written);
        information.setCreationDate(when);
        information.setModificationDate(when);
    }

    private static PDOutputIntent colours(PDDocument document) throws IOException {
        byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
        PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(profile));
        intent.setInfo(SRGB);
        intent.setOutputCondition(SRGB);
        intent.setOutputConditionIdentifier(SRGB);
        intent.setRegistryName("http://www.color.org");
        return intent;
    }
}
