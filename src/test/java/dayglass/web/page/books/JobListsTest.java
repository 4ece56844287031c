package dayglass.web.page.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dayglass.support.Served;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The lists of a job, read back by libraries that did not write them. */
class JobListsTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    Path folder;

    private static byte[] bytes(Served served, String address) throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + served.port() + address))
                                .build(),
                        BodyHandlers.ofByteArray());
        assertEquals(200, answer.statusCode());
        return answer.body();
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\h", " ");
        }
    }

    @Test
    void hireAndInsuranceAreListed() throws Exception {
        try (Served served = Served.in(folder)) {
            long job = served.post("/api/jobs/import", Served.example("01-three-day-week"))
                    .id();
            served.post("/api/units", """
                    {"tag": "Q-1", "value": {"amount": "3500.00", "currency": "EUR", "setOn": "2027-01-01"}}""");
            for (String order : new String[] {"\"tag\": \"Q-1\"", "\"purchaseOrder\": \"PO-9\""}) {
                served.post(
                        "/api/jobs/" + job + "/book-entries",
                        "{\"kind\": \"commitment\", \"date\": \"2027-04-01\", \"supplier\": \"Quay & Sons\","
                                + " \"description\": \"=40 mm\", \"net\": \"120.00\", \"serviceFrom\": \"2027-04-05\","
                                + " \"serviceTo\": \"2027-04-09\", " + order + "}");
            }
            String books = "/books/" + job;
            String hire = text(bytes(served, books + "/hire.pdf"));
            assertTrue(hire.contains("Quay & Sons") && hire.contains("PO-9") && hire.contains("240.00"), hire);
            String insured = text(bytes(served, books + "/insurance.pdf"));
            assertTrue(insured.contains("3 500.00 EUR") && insured.contains("Lines without a value"), insured);
            try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(bytes(served, books + "/hire.xlsx")))) {
                Sheet sheet = book.getSheet("Cost of hire");
                assertEquals(5, sheet.getRow(1).getCell(7).getNumericCellValue());
                assertEquals("=40 mm", sheet.getRow(1).getCell(2).getStringCellValue());
                assertEquals(240, sheet.getRow(3).getCell(8).getNumericCellValue());
            }
            try (XSSFWorkbook book =
                    new XSSFWorkbook(new ByteArrayInputStream(bytes(served, books + "/insurance.xlsx")))) {
                Sheet sheet = book.getSheet("To be insured");
                assertEquals("Q-1", sheet.getRow(1).getCell(1).getStringCellValue());
                assertEquals(3500, sheet.getRow(1).getCell(6).getNumericCellValue());
                assertTrue(sheet.getRow(2).getCell(7).getStringCellValue().startsWith("not known"));
            }
        }
    }
}
