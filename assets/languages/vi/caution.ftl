# Cautions of a drink. Each is a clause in small letters without a full stop; a word for its kind stands before it.
# Sources, figures and "follow your local code" belong to the safety of a caution: no translation leaves them out.

# $celsius and $limit are temperatures with their unit.
caution-too-hot = { $celsius } khi phục vụ, trên { $limit }: quá nóng để uống ngay, và nếu đổ ra sẽ gây bỏng; hãy để nguội hoặc thêm nước lạnh, và theo quy định tại địa phương
# $adult and $child are times ("less than 1 s"); $child is "sooner" where no time is published for small children.
caution-too-hot-burns = { $celsius } khi phục vụ, trên { $limit }: quá nóng để uống ngay, và nếu đổ ra sẽ gây bỏng (da người lớn bị bỏng độ hai hoặc sâu hơn trong { $adult }, da trẻ nhỏ { $child ->
    [sooner] còn nhanh hơn
   *[other] trong { $child }
}); hãy để nguội hoặc thêm nước lạnh, và theo quy định tại địa phương
caution-hot-through-wide-straw = { $celsius } qua ống hút to, trên { $limit }: đồ uống còn nóng khi vào đến họng; hãy bỏ ống hút hoặc phục vụ nguội hơn, và theo quy định tại địa phương
caution-scalds = { $celsius } khi phục vụ: nếu đổ ra sẽ gây bỏng; hãy đậy kín ly và theo quy định tại địa phương
caution-scalds-burns = { $celsius } khi phục vụ: nếu đổ ra sẽ gây bỏng (da người lớn bị bỏng độ hai hoặc sâu hơn trong { $adult }, da trẻ nhỏ { $child ->
    [sooner] còn nhanh hơn
   *[other] trong { $child }
}); hãy đậy kín ly và theo quy định tại địa phương
scald-time-at-most = tối đa { $time }
scald-time-less-than = chưa đến { $time }

# $clauses are those of allergen.ftl.
caution-allergens = { $clauses }. Chỉ xét theo nguyên liệu: bình lắc, muỗng đong và máy xay dùng chung có thể để lại dấu vết; hãy theo quy định tại địa phương
# $named are clauses of caution-named.
caution-statements-contradict = danh sách thành phần mâu thuẫn với thông tin đã nhập: { $named }; hãy đọc bao bì trước khi trả lời khách
# $words are words of the ingredient list on the pack, as they stand there.
caution-named = { $ingredient }: “{ $words }”
caution-claims-contradicted = sổ công thức tự mâu thuẫn: { $claims }; hãy đọc các bao bì trước khi trả lời khách
# $claim is what the entry of an ingredient says: "vegan", "dairy-free" or "allergens" (that its allergens are listed whole).
claim-against-allergen = { $ingredient } được nhập là { $claim ->
    [vegan] thuần chay
    [dairy-free] không có sữa
   *[allergens] đã ghi đủ chất gây dị ứng
}, nhưng chất gây dị ứng của nó gồm có { $allergen }
claim-against-honey = { $ingredient } được nhập là { $claim ->
    [vegan] thuần chay
    [dairy-free] không có sữa
   *[allergens] đã ghi đủ chất gây dị ứng
}, nhưng đường trong đó là đường của mật ong
claim-against-milk-sugars = { $ingredient } được nhập là { $claim ->
    [vegan] thuần chay
    [dairy-free] không có sữa
   *[allergens] đã ghi đủ chất gây dị ứng
}, nhưng đường trong đó là đường của sữa
claim-against-not-dairy-free = { $ingredient } được nhập là { $claim ->
    [vegan] thuần chay
    [dairy-free] không có sữa
   *[allergens] đã ghi đủ chất gây dị ứng
}, đồng thời lại được nhập là có sữa
claim-against-part = { $claim ->
    [vegan] { $ingredient } được nhập là thuần chay, nhưng { $part } trong đó không thuần chay
    [dairy-free] { $ingredient } được nhập là không có sữa, nhưng { $part } trong đó thì không phải vậy
   *[allergens] { $ingredient } được nhập là đã ghi đủ chất gây dị ứng, nhưng { $part } trong đó thì chưa ghi đủ
}
claim-against-every-part = { $claim ->
    [vegan] { $ingredient } được nhập là không thuần chay, nhưng mọi thứ trong đó đều thuần chay
    [dairy-free] { $ingredient } được nhập là có sữa, nhưng mọi thứ trong đó đều không có sữa
   *[allergens] { $ingredient } được nhập là chưa ghi đủ chất gây dị ứng, nhưng mọi thứ trong đó đều đã ghi đủ
}
claim-against-allergen-of-part = chất gây dị ứng của { $ingredient } thiếu { $allergen }, vốn có trong { $part }

caution-choking = { $ingredients }: trẻ nhỏ có thể hít những viên nhỏ, dai qua ống hút vào đường thở (BfR 2012, đến 4 tuổi); hãy cảnh báo khách và theo quy định tại địa phương

# $kept are clauses of kept-warm and kept-cold.
caution-kept-at = { $kept }; hãy theo quy định tại địa phương
kept-warm = { $ingredient } ở { $celsius }: nếu bảo quản ở nhiệt độ đó, việc giữ nóng cần ít nhất { $uk } (Vương quốc Anh) hoặc { $us } (Mỹ)
kept-cold = { $ingredient } ở { $celsius }: nếu bảo quản ở nhiệt độ đó, việc giữ lạnh cần tối đa { $uk } (Vương quốc Anh) hoặc { $us } (Mỹ)

# $rules are clauses that begin with use-.
caution-use-within = { $rules }. Theo quy tắc riêng của quán; hãy theo quy định tại địa phương
# The shop has no rule for any of them.
caution-no-use-rules = { $rules }; hãy theo quy định tại địa phương
use-within-of-brewing = { $ingredient }: dùng trong vòng { $time } sau khi ủ trà
use-long-after-brewing = { $ingredient }: theo quy tắc của quán, dùng trong vòng { $time } sau khi ủ trà, lâu hơn mức { $limit } của Tea Council of the USA theo bản ghi nhớ năm 1996 của CDC
use-not-stated-after-brewing = { $ingredient }: quán không ghi quy tắc bảo quản; Tea Council of the USA nêu tối đa { $limit } sau khi ủ trà
use-within-of-making = { $ingredient }: dùng trong vòng { $time } sau khi làm
use-not-stated-after-making = { $ingredient }: tự làm tại quán, không ghi thời hạn bảo quản
use-within-of-opening = { $ingredient }: dùng trong vòng { $time } sau khi mở
use-not-stated-after-opening = { $ingredient }: không ghi thời hạn bảo quản sau khi mở

# $acid is a mass, at least that mass where an ingredient does not state its acid.
caution-curdles = { $acid } axit trong 100 ml có thể làm sữa hoặc đậu nành bị kết tủa: hãy thêm sữa hoặc đậu nành sau cùng, khi còn lạnh, và phục vụ ngay
caution-may-curdle = sữa hoặc đậu nành có thể bị kết tủa, vì không ghi lượng axit trong { $ingredients }: hãy thêm sữa hoặc đậu nành sau cùng, khi còn lạnh, và phục vụ ngay

# $caffeine is a mass; $lines are clauses that begin with caffeine-.
caution-caffeine = { $caffeine } caffeine: { $lines }
caffeine-above-single-dose = trên liều dùng một lần { $limit } cho người lớn (EFSA 2015); phụ nữ mang thai và trẻ em thì ít hơn
caffeine-may-disturb-sleep = { $limit } có thể ảnh hưởng đến giấc ngủ (EFSA 2015)
caffeine-high-content = { $caffeine }, trên { $limit }: trừ khi tên có chữ “trà” hoặc “cà phê”, đồ uống có thể phải ghi “Hàm lượng caffeine cao” (Quy định (EU) số 1169/2011, Phụ lục III)
caution-caffeine-not-known = chưa rõ lượng caffeine: { $ingredients }; hãy đọc nhãn trước khi trả lời khách
caution-caffeine-not-known-at-all = chưa rõ lượng caffeine; hãy đọc nhãn trước khi trả lời khách

# $mentions are clauses that begin with mention-; $named are clauses of caution-named.
caution-additives = theo danh sách thành phần, có thể phải nêu: { $mentions }; hãy đọc các bao bì và theo quy định tại địa phương
mention-phenylalanine = có chứa nguồn phenylalanine ({ $named })
mention-children-colour = phẩm màu có thể ảnh hưởng xấu đến hoạt động và sự chú ý của trẻ em ({ $named })
mention-polyol = polyol, dùng nhiều có thể gây nhuận tràng ({ $named })
mention-quinine = quinine ({ $named })
mention-caffeine = caffeine bổ sung ({ $named })
mention-sweetener = có chất tạo ngọt ({ $named })
mention-allergen = { $allergen } ({ $named })
mention-animal = sản phẩm từ động vật ({ $named })
mention-perhaps-animal = sản phẩm có thể từ động vật ({ $named })

caution-undissolved = { $sucrose } sucrose trong { $whole } sucrose và nước, nhưng ở { $celsius } chỉ tan tối đa { $most } (Bubnik & Kadlec 1995): một phần còn lại ở dạng hạt; hãy bớt đường hoặc thêm nước
caution-runs-over = { $fill } dung tích { $cup }, nhưng dưới miệng ly và nắp chỉ chứa được { $most }: sẽ tràn; hãy giảm lượng hoặc dùng ly lớn hơn
caution-not-known = chưa rõ: { $gaps }; hãy đọc nhãn trước khi trả lời khách
gap-vegan = có thuần chay hay không

# What a caution is about; it stands before the sentence.
caution-kind-heat = nóng
caution-kind-allergen = chất gây dị ứng
caution-kind-choking = hóc nghẹn
caution-kind-curdling = kết tủa
caution-kind-caffeine = caffeine
caution-kind-additive = phụ gia
caution-kind-holding = bảo quản
caution-kind-undissolved = chưa tan
caution-kind-fill = dung tích
caution-kind-unknown = chưa rõ
