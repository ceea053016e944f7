"""Writes the workbooks beside it, with openpyxl 3.0.9 (Debian 12): spreadsheets that no code of this project made."""
import datetime
import os

from openpyxl import Workbook

here = os.path.dirname(os.path.abspath(__file__))


def seeds():
    book = Workbook()
    sheet = book.active
    sheet.title = "Seeds & sowing"
    sheet["A1"] = "My seed list 2025"
    heads = ["Cultivar", "Crop", "Seed house", "Ordered", "Price", "Sown", "Where sown", "Planted out", "How many", "Bed", "Germination"]
    for at, head in enumerate(heads, start=1):
        sheet.cell(row=3, column=at, value=head)
    day = datetime.date
    rows = [
        ["Sungold", "tomato", "Penrow Seeds", day(2025, 1, 12), 2.4, day(2025, 3, 1), "propagator", day(2025, 5, 24), 6, "Top Border", 0.85],
        ["Boltardy", "beetroot", "own saved", None, None, datetime.datetime(2025, 4, 12, 23, 59), "direct", None, 40, "Top Border", None],
        ["Winter Density", "lettuce", "Penrow Seeds", None, None, day(2025, 4, 1), "trays", None, None, None, None],
        ["Musselburgh", "leek", "Penrow Seeds", None, None, None, None, day(2025, 6, 20), "=5*8", "Low Border", None],
        ["Rouge vif d’Étampes", "squash", "Swap at the hall", None, None, None, None, None, None, None, None],
    ]
    for at, row in enumerate(rows, start=4):
        for column, value in enumerate(row, start=1):
            sheet.cell(row=at, column=column, value=value)
    for cell in ("D4", "F4", "H4"):
        sheet[cell].number_format = "dd/mm/yyyy"
    sheet["F5"].number_format = "yyyy-mm-dd h:mm"
    # Typed as "Apr 2025": the cell holds the first of the month, and shows none.
    sheet["F6"].number_format = "mmm yyyy"
    sheet["H7"].number_format = "[$-809]d mmmm yyyy"
    sheet["E4"].number_format = "[$£-809]#,##0.00"
    sheet["K4"].number_format = "0%"
    book.create_sheet("Empty")
    book.save(os.path.join(here, "seeds-2025.xlsx"))


def two_sheets():
    book = Workbook()
    book.active.title = "Varieties"
    book.active.append(["Variety", "Crop"])
    book.active.append(["Crown Prince", "squash"])
    other = book.create_sheet("Plantings")
    other.append(["Variety", "Crop", "Planted", "Bed"])
    other.append(["Crown Prince", "squash", datetime.date(2024, 5, 30), "Long Bed"])
    other["C2"].number_format = "d mmm yyyy"
    book.epoch = datetime.datetime(1904, 1, 1)
    book.save(os.path.join(here, "two-sheets.xlsx"))


seeds()
two_sheets()
