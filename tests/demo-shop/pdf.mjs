/**
 * The smallest PDF with one line of text on one A4 page.
 * @param {string} text without brackets or backslashes
 */
export function pdfPage(text) {
  const drawn = `BT /F1 14 Tf 72 760 Td (${text}) Tj ET`
  const objects = [
    '<< /Type /Catalog /Pages 2 0 R >>',
    '<< /Type /Pages /Kids [3 0 R] /Count 1 >>',
    '<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595 842] /Contents 4 0 R /Resources << /Font << /F1 5 0 R >> >> >>',
    `<< /Length ${drawn.length} >>\nstream\n${drawn}\nendstream`,
    '<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>'
  ]
  let body = '%PDF-1.4\n'
  const places = objects.map((object, index) => {
    const place = body.length
    body += `${index + 1} 0 obj\n${object}\nendobj\n`
    return place
  })
  const table = places.map((place) => `${String(place).padStart(10, '0')} 00000 n \n`).join('')
  const size = objects.length + 1
  return `${body}xref\n0 ${size}\n0000000000 65535 f \n${table}trailer\n<< /Size ${size} /Root 1 0 R >>\nstartxref\n${body.length}\n%%EOF\n`
}
